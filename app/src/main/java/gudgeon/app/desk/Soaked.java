package gudgeon.app.desk;

import gudgeon.core.book.Fault;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;

/** Penetrating oil on a joint that is likely to be seized, put on before anything resists. */
public final class Soaked {
    /** The oil is counted on for as long; then it has crept away or dried. Typical, common practice. */
    public static final Duration LASTS = Duration.ofDays(7);

    private static final String RUNG = "soak";

    private Soaked() {}

    /** A joint was soaked. */
    public static Deed joint(String joint) {
        return new RescueTried(joint, List.of(), RUNG, 0, Fault.Outcome.NO);
    }

    /** Whether the book has a soak of the joint that still counts. */
    static boolean lately(Job job, String joint, OffsetDateTime now) {
        return job.state().history().stream()
                .anyMatch(told -> told.counts()
                        && told.entry().body() instanceof Fault.Rescue rescue
                        && rescue.joint().equals(joint)
                        && rescue.rung().equals(RUNG)
                        && Duration.between(told.entry().stamp().at(), now).compareTo(LASTS) < 0);
    }
}
