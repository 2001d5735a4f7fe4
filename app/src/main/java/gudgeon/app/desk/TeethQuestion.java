package gudgeon.app.desk;

import gudgeon.core.geometry.ToothTiming;
import java.util.OptionalLong;

/**
 * What is one tooth of a timing drive worth, and after how many turns do which marks meet again?
 *
 * @param timing wheels and belt
 */
public record TeethQuestion(ToothTiming timing) {
    /**
     * The answer. Crank degrees and turns of the crank.
     *
     * @param ratio crank turns for one of the camshaft
     * @param fourStroke whether that is 2
     * @param oneToothCrankDeg one tooth
     * @param wheelMarksMeetTurns wheel marks; more than 2 in a four-stroke means that the count of teeth is wrong
     * @param crankAndBeltMeetTurns an ink mark on the belt and the crank's; empty without a belt
     * @param allMeetTurns everything as it stood; empty without a belt
     */
    public record Answer(
            double ratio,
            boolean fourStroke,
            double oneToothCrankDeg,
            long wheelMarksMeetTurns,
            OptionalLong crankAndBeltMeetTurns,
            OptionalLong allMeetTurns) {}

    /** Works it out. */
    public Answer ask() {
        return new Answer(
                timing.ratio(),
                timing.cam_teeth() == 2 * timing.crank_teeth(),
                timing.oneTooth_crankDeg(),
                timing.wheelMarksMeet(),
                timing.crankAndBeltMeet(),
                timing.allMeet());
    }
}
