package gudgeon.app.web.today;

import gudgeon.app.desk.AtHand;
import gudgeon.app.desk.TodayQuestion;
import gudgeon.app.desk.UnknownName;
import gudgeon.app.web.page.Form;
import gudgeon.core.session.SessionRequest;
import gudgeon.core.session.Window;
import io.javalin.http.Context;
import java.time.LocalTime;
import java.time.OffsetDateTime;
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
        Optional<LocalTime> from = time(form, "helper-from");
        Optional<LocalTime> until = time(form, "helper-until");
        if (!form.sound()) {
            return List.of();
        }
        Optional<Window> window = AtHand.window("helper", now.toLocalTime(), from, until);
        if (window.isEmpty()) {
            form.refuse(
                    "helper-until", from.isEmpty() ? "That is past." : "The helper cannot go before they come.");
        }
        return window.stream().toList();
    }

    private static Optional<LocalTime> time(Form form, String name) {
        String text = form.typed(name).strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.matches("([01]?[0-9]|2[0-3])[:.][0-5][0-9]")) {
            form.refuse(name, "Write the time as 14:30.");
            return Optional.empty();
        }
        return Optional.of(LocalTime.parse((text.length() == 4 ? "0" : "") + text.replace('.', ':')));
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
                                    : " Maybe " + String.join(", or ", name.told()) + "?"));
        }
    }
}
