package gudgeon.app.desk;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.Preload;
import gudgeon.core.bolting.PropertyClass;
import java.util.Optional;

/**
 * What an angle does to a bolt below yield.
 *
 * @param thread as written
 * @param angle as written
 * @param length stretched length, as written
 * @param grade property class; empty when not known
 * @param jointShare compliance of what is clamped as a share of the bolt's: 0 % for stiff
 */
public record BoltAngle(String thread, String angle, String length, String grade, String jointShare) {
    /** Young's modulus of steel, gigapascals. */
    private static final double STEEL_GPa = 205;

    /**
     * The answer.
     *
     * @param angle_deg the angle
     * @param spring the bolt as a spring
     * @param gained_N preload gained as long as nothing yields
     * @param stretch_mm how much longer the bolt becomes
     * @param proof_N proof load, when a class was given
     * @param toProof_deg angle from nothing to that load
     */
    public record Answer(
            MetricThread thread,
            double angle_deg,
            Preload.Spring spring,
            double gained_N,
            double stretch_mm,
            Optional<Double> proof_N,
            Optional<Double> toProof_deg) {}

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        MetricThread read = written.thread("thread", thread);
        double turned_deg = written.quantity("angle", angle, QuantityKind.ANGLE).value();
        double length_mm = written.length_mm("length", length);
        double share = jointShare.isBlank() ? 0 : written.share("joint", jointShare);
        Preload.Spring alone = new Preload.Spring(STEEL_GPa, read.stressArea_mm2(), length_mm, 0);
        Preload.Spring spring = new Preload.Spring(
                STEEL_GPa, read.stressArea_mm2(), length_mm, share * alone.boltCompliance_mm_per_N());
        double gained_N = spring.preloadFromAngle_N(read.pitch_mm(), turned_deg);
        Optional<Double> proof_N = grade.isBlank()
                ? Optional.empty()
                : Optional.of(written.grade(grade)).map((PropertyClass known) -> known.proofLoad_N(read));
        return new Answer(
                read,
                turned_deg,
                spring,
                gained_N,
                spring.stretch_mm(gained_N),
                proof_N,
                proof_N.map(load -> spring.angleForPreload_deg(read.pitch_mm(), load)));
    }
}
