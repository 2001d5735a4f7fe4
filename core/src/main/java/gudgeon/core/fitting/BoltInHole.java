package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.List;

/**
 * What becomes of a bolt of one kind in a hole of another, from lengths and threads alone.
 *
 * @param engaged_mm length of thread that holds; 0 when it does not reach
 * @param wanted_mm length that the material asks for at least
 * @param over_mm how far the tip goes too deep: past the bottom of a blind hole, or past the room behind one that goes through; 0
 *     or less when it does not
 * @param out_mm how far the tip stands out behind a hole that goes through; 0 when it does not
 * @param hindrances why it does not belong there; none when it may
 * @param remarks what is to be minded when it may
 */
public record BoltInHole(
        double engaged_mm,
        double wanted_mm,
        double over_mm,
        double out_mm,
        List<Hindrance> hindrances,
        List<Remark> remarks) {
    public BoltInHole {
        hindrances = List.copyOf(hindrances);
        remarks = List.copyOf(remarks);
    }

    private static final double HAIR_mm = 1e-9;

    /** Why a bolt does not belong in a hole. */
    public enum Hindrance {
        OTHER_THREAD,
        /** It meets the bottom before the head bears: it feels tight and clamps nothing, or cracks the casting. */
        BOTTOMS,
        /** Too little thread holds. */
        SHORT,
        /** It reaches something that moves. */
        REACHES_MOVING_PART,
        /** It reaches something that does not move. */
        REACHES_PART
    }

    /** What is to be minded. */
    public enum Remark {
        /** More than the least, less than what is good for the material. */
        ENGAGEMENT_FAIR,
        /** Less than one pitch is left below the tip. */
        NEAR_THE_BOTTOM,
        /** The hole opens to a fluid: the thread needs sealing. */
        SEAL_THE_THREAD,
        MATERIAL_UNKNOWN
    }

    /** Whether the bolt may go in. */
    public boolean isLegal() {
        return hindrances.isEmpty();
    }

    /** Puts a bolt into a hole. */
    public static BoltInHole of(TinBolt bolt, TinHole hole) {
        double reach_mm = bolt.length_mm() - hole.clamped_mm();
        TinHole.Ground ground = hole.ground();
        double diameter_mm = bolt.thread().diameter_mm();
        double engaged_mm = Math.max(0, Math.min(reach_mm, ground.depth_mm()));
        double wanted_mm = ground.material().leastDiameters() * diameter_mm;
        double out_mm = ground.through() ? Math.max(0, reach_mm - ground.depth_mm()) : 0;
        double over_mm =
                reach_mm - ground.depth_mm() - (ground.through() ? hole.behind().room_mm() : 0);
        List<Hindrance> hindrances = new ArrayList<>();
        if (!same(bolt, hole)) {
            hindrances.add(Hindrance.OTHER_THREAD);
        }
        if (over_mm > HAIR_mm) {
            hindrances.add(tooDeep(hole));
        }
        if (engaged_mm < wanted_mm - HAIR_mm) {
            hindrances.add(Hindrance.SHORT);
        }
        return new BoltInHole(
                engaged_mm, wanted_mm, over_mm, out_mm, hindrances, remarks(bolt, hole, engaged_mm, over_mm));
    }

    private static Hindrance tooDeep(TinHole hole) {
        if (!hole.ground().through()) {
            return Hindrance.BOTTOMS;
        }
        return hole.behind().moves() ? Hindrance.REACHES_MOVING_PART : Hindrance.REACHES_PART;
    }

    private static List<Remark> remarks(TinBolt bolt, TinHole hole, double engaged_mm, double over_mm) {
        List<Remark> remarks = new ArrayList<>();
        if (engaged_mm
                < hole.ground().material().goodDiameters() * bolt.thread().diameter_mm() - HAIR_mm) {
            remarks.add(Remark.ENGAGEMENT_FAIR);
        }
        if (!hole.ground().through() && over_mm > -bolt.thread().pitch_mm()) {
            remarks.add(Remark.NEAR_THE_BOTTOM);
        }
        if (!hole.behind().opensTo().isEmpty()) {
            remarks.add(Remark.SEAL_THE_THREAD);
        }
        if (hole.ground().material() == TinHole.Material.UNKNOWN) {
            remarks.add(Remark.MATERIAL_UNKNOWN);
        }
        return remarks;
    }

    private static boolean same(TinBolt bolt, TinHole hole) {
        return bolt.leftHand() == hole.leftHand()
                && Math.abs(bolt.thread().diameter_mm() - hole.thread().diameter_mm()) < 1e-6
                && Math.abs(bolt.thread().pitch_mm() - hole.thread().pitch_mm()) < 1e-6;
    }
}
