package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.session.SessionPlan;
import gudgeon.core.session.Stand;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** A session in plain words. */
public final class SessionWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);
    private static final int MOST_NAMED = 3;

    private final Names names;

    public SessionWords(Engine engine) {
        this.names = new Names(engine);
    }

    /** What must not be left so, as a sentence. */
    public String unsafe(Stand.Unsafe unsafe) {
        String about = Figures.list(unsafe.about().stream().map(names::any).toList(), MOST_NAMED);
        return switch (unsafe.kind()) {
            case LOOSE -> "Loose, held by nothing: " + about + ".";
            case CRACKED_LOOSE -> "Cracked loose while the starter has current: " + about + ". Take the battery off.";
            case PINS_AND_CURRENT -> "Pins are in while the starter has current: " + about + ". Take the battery off.";
            case ON_A_JACK -> "On a jack, and a jack sinks: " + about + ". Put stands under it.";
            case SEALANT_OPEN -> "Sealant is on and it is not together: " + about + ".";
            case NOT_HELD -> "In its place, held by nothing: " + about + ".";
            case HALF_TIGHTENED -> "Together, without all its stages: " + about + ".";
        };
    }

    /** Why a session goes no further, as a sentence; empty when all is done. */
    public String ended(SessionPlan plan) {
        return switch (plan.ended()) {
            case ALL_DONE -> "";
            case TIME -> "The next safe stop is too far for the time there is.";
            case NOT_AT_HAND -> "Then " + Figures.list(plan.about()) + " would be needed, and may be gone by then.";
            case UNSAFE_NOW -> "It stands unsafe now: this comes first, whatever it takes.";
        };
    }

    /** "Soak the manifold nuts with penetrating oil, and leave it". */
    public String soak(String joint) {
        return "Soak with penetrating oil: " + names.any(joint);
    }

    /** Minutes as a time: "75 min" is "1 h 15 min"; "too long to say" when it lies beyond what was looked at. */
    public static String minutes(double minutes) {
        return Double.isFinite(minutes) ? Figures.time(Math.round(minutes) * 60) : "too long to say";
    }

    /** A chance in per cent, never 100 or 0. */
    public static String chance(double chance) {
        return Math.clamp(Math.round(chance * 100), 1, 99) + " %";
    }

    /** "16:05". */
    public static String clock(OffsetDateTime time) {
        return CLOCK.format(time);
    }

    /** "6 Dec 2026". */
    public static String day(OffsetDateTime time) {
        return DAY.format(time);
    }

    /** "today", "1 day", "41 days". */
    public static String days(long days) {
        return days == 0 ? "today" : days == 1 ? "1 day ago" : days + " days ago";
    }

    /** Openings by name. */
    public List<String> names(List<String> ids) {
        return ids.stream().map(names::any).map(Names::capital).toList();
    }
}
