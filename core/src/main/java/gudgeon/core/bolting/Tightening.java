package gudgeon.core.bolting;

/**
 * Torque and preload of one bolt in one hole.
 *
 * <p>The torque that turns the head is split in three: M = F (0.16 P + 0.58 d2 µG + DKm/2 µK): what lifts along the thread,
 * what rubs in the thread, what rubs under the head. The first two twist the shank. Valid for metric threads with 60° flanks
 * and shanks not thinner than the stress area, steel, tightened by turning the head or nut.
 *
 * <p>Source: [VDI2230] assembly preload and tightening torque; [ISO16047] the same split.
 *
 * @param thread the thread
 * @param bearing what is turned bears on
 */
public record Tightening(MetricThread thread, Bearing bearing) {
    private static final double LEAD = 0.16;
    private static final double FLANK = 0.58;

    /**
     * A torque by what it does, newton metres.
     *
     * @param lead_Nm lifts along the thread
     * @param thread_Nm rubs in the thread
     * @param head_Nm rubs under the head
     */
    public record Torques(double lead_Nm, double thread_Nm, double head_Nm) {
        /** The whole. */
        public double total_Nm() {
            return lead_Nm + thread_Nm + head_Nm;
        }

        /** What twists the shank. */
        public double shank_Nm() {
            return lead_Nm + thread_Nm;
        }
    }

    /** The parts of the torque that gives a preload. */
    public Torques torques(double preload_N, Friction friction) {
        return new Torques(
                preload_N * LEAD * thread.pitch_mm() / 1000,
                preload_N * FLANK * thread.pitchDiameter_mm() * friction.thread() / 1000,
                preload_N * bearing.effective_mm() / 2 * friction.head() / 1000);
    }

    /** The torque that gives a preload, newton metres. */
    public double torque_Nm(double preload_N, Friction friction) {
        return torques(preload_N, friction).total_Nm();
    }

    /** The preload that a torque gives, newtons. */
    public double preload_N(double torque_Nm, Friction friction) {
        return torque_Nm / torques(1, friction).total_Nm();
    }

    /**
     * Equivalent stress (von Mises) in the stress area while the preload is on and the torque that made it still twists,
     * megapascals; fully plastic torsion as in the standard.
     */
    public double equivalentStress_MPa(double preload_N, double threadFriction) {
        double twist = Preload.twist(thread, threadFriction);
        return preload_N / thread.stressArea_mm2() * Math.sqrt(1 + 3 * twist * twist);
    }

    /** Nut factor K = T / (F d) of a preload and its friction, without unit. */
    public double nutFactor(Friction friction) {
        return Preload.nutFactor(torque_Nm(1, friction), 1, thread.diameter_mm());
    }

    /**
     * What a torque does to a bolt when friction is only known as a range: the rougher, the less preload.
     *
     * @param low the preload at the most friction
     * @param likely the preload half way
     * @param high the preload at the least friction
     */
    public record Band(Point low, Point likely, Point high) {
        /** How many times more preload the slippery bolt has than the rough one. */
        public double ratio() {
            return high.preload_N() / low.preload_N();
        }
    }

    /**
     * A point of a band.
     *
     * @param friction the friction there
     * @param preload_N newtons
     * @param stress_MPa equivalent stress while tightening, megapascals
     * @param yieldShare that stress over the lowest yield stress; above 1 the bolt stretches for good
     */
    public record Point(Friction friction, double preload_N, double stress_MPa, double yieldShare) {}

    /** The band of preload that a torque gives. */
    public Band band(double torque_Nm, Friction.Range range, PropertyClass grade) {
        return new Band(
                point(torque_Nm, range.most(), grade),
                point(torque_Nm, range.middle(), grade),
                point(torque_Nm, range.least(), grade));
    }

    private Point point(double torque_Nm, Friction friction, PropertyClass grade) {
        double preload_N = preload_N(torque_Nm, friction);
        double stress_MPa = equivalentStress_MPa(preload_N, friction.thread());
        return new Point(friction, preload_N, stress_MPa, stress_MPa / grade.yield_MPa(thread.diameter_mm()));
    }
}
