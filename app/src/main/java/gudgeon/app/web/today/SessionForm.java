package gudgeon.app.web.today;

import gudgeon.app.desk.TodayQuestion;
import gudgeon.app.desk.UnknownName;
import gudgeon.app.web.page.Form;
import gudgeon.core.session.SessionRequest;
import gudgeon.core.session.Window;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What the address asks of today's card. What is wrong stands beside its field. */
record SessionForm(Form form, TodayQuestion question) {
    static final String USUAL = "90";
    private static final double USUAL_MINUTES = 90;
    private static final int MOST_TOOLS = 40;

    static SessionForm of(Context request, OffsetDateTime now) {
        Form form = Form.empty();
        for (String name : List.of("minutes", "keep", "first", "helper-from", "helper-until", "dark")) {
            form.with(name, Optional.ofNullable(request.queryParam(name)).orElse(""));
        }
        if (form.typed("minutes").isBlank()) {
            form.with("minutes", USUAL);
        }
        List<String> without = request.queryParams("without").stream()
                .filter(tool -> !tool.isBlank())
                .limit(MOST_TOOLS)
                .toList();
        OptionalInt minutes = form.whole("minutes", "the time", TodayQuestion.SHORTEST, TodayQuestion.LONGEST);
        OptionalDouble keep = form.number("keep", "the time kept", 0, TodayQuestion.LONGEST);
        String first = form.optionalLine("first", "the part");
        List<Window> windows = windows(form, now);
        TodayQuestion question = new TodayQuestion(
                minutes.orElse((int) USUAL_MINUTES),
                SessionRequest.USUAL_CHANCE,
                keep,
                without,
                first.isEmpty() ? List.of() : List.of(first),
                windows,
                form.ticked("dark"));
        return new SessionForm(form, question);
    }

    /** When the helper is there. */
    private static List<Window> windows(Form form, OffsetDateTime now) {
        if (form.typed("helper-from").isBlank() && form.typed("helper-until").isBlank()) {
            return List.of();
        }
        double from = minutes(form, "helper-from", now, 0);
        double until = minutes(form, "helper-until", now, TodayQuestion.LONGEST);
        if (form.sound() && until < from) {
            form.refuse("helper-until", "The helper cannot go before they come.");
        }
        List<Window> windows = new ArrayList<>();
        if (form.sound()) {
            windows.add(new Window("helper", from, until));
        }
        return windows;
    }

    private static double minutes(Form form, String name, OffsetDateTime now, double otherwise) {
        String text = form.typed(name).strip();
        if (text.isEmpty()) {
            return otherwise;
        }
        if (!text.matches("([01]?[0-9]|2[0-3])[:.][0-5][0-9]")) {
            form.refuse(name, "Write the time as 14:30.");
            return otherwise;
        }
        LocalTime time = LocalTime.parse((text.length() == 4 ? "0" : "") + text.replace('.', ':'));
        return Math.max(0, Duration.between(now.toLocalTime(), time).toMinutes());
    }

    /** Notes which word named nothing. */
    void refuse(TodayQuestion.Reply reply) {
        if (reply instanceof TodayQuestion.Reply.Unknown unknown) {
            UnknownName name = unknown.names().getFirst();
            form.refuse(
                    "first",
                    "No part is called " + name.word() + "."
                            + (name.near().isEmpty()
                                    ? ""
                                    : " Maybe " + name.near().getFirst() + "?"));
        }
    }
}
