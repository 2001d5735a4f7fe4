package gudgeon.app.desk;

import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.PropertyClass;
import gudgeon.core.bolting.ThreadTolerance;
import gudgeon.core.bolting.UnifiedThread;
import java.util.Optional;

/**
 * What a thread is: sizes, strength, limits.
 *
 * @param thread as written
 * @param grade property class; empty when not asked
 * @param tolerance tolerance class; empty when not asked
 */
public record BoltThread(String thread, String grade, String tolerance) {
    /**
     * The answer.
     *
     * @param thread in millimetres
     * @param unified in inches, when it was written so
     * @param grade the property class asked for
     * @param limits the limits asked for
     */
    public record Answer(
            MetricThread thread,
            Optional<UnifiedThread> unified,
            Optional<PropertyClass> grade,
            Optional<ThreadTolerance.Limits> limits) {}

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        MetricThread read = written.thread("thread", thread);
        return new Answer(
                read,
                Written.findUnified(thread),
                grade.isBlank() ? Optional.empty() : Optional.of(written.grade(grade)),
                tolerance.isBlank()
                        ? Optional.empty()
                        : Optional.of(ThreadTolerance.parse(tolerance).limits(read)));
    }
}
