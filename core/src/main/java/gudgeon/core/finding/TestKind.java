package gudgeon.core.finding;

import java.util.List;
import java.util.Optional;

/**
 * A test.
 *
 * @param id its name in files and answers
 * @param name what it is called
 * @param shows what it tells about
 * @param needs what an engine must be or have for it to make sense
 * @param effort what it takes
 * @param reads the figure that it gives, when it gives one
 * @param badly how it goes wrong
 * @param cautions ids of cautions that stand before it
 */
public record TestKind(
        String id,
        String name,
        String shows,
        List<String> needs,
        Effort effort,
        Optional<Figure> reads,
        Badly badly,
        List<String> cautions) {
    public TestKind {
        needs = List.copyOf(needs);
        cautions = List.copyOf(cautions);
    }

    /** A figure that a test gives for one cylinder. */
    public enum Figure {
        /** Highest gauge pressure while cranking, Pa. */
        COMPRESSION,
        /** The same after oil, over the same before. */
        WET_RATIO,
        /** Share of the supply that is lost, 0 to 1. */
        LEAK,
        /** Height of the current's hump over that of the better half. */
        CURRENT,
        /** Fall of speed when cut, over the median fall. */
        BALANCE
    }

    /**
     * @param tools what must be owned or borrowed
     * @param minutes once, on an engine as it stands
     * @param each minutes for every cylinder
     * @param ready states that save time when an earlier test left them
     * @param engine in which state the engine must be, in words
     * @param diesel what is different on a diesel
     */
    public record Effort(
            List<String> tools, double minutes, double each, List<String> ready, String engine, Optional<OnDiesel> diesel) {
        public Effort {
            tools = List.copyOf(tools);
            ready = List.copyOf(ready);
        }
    }

    /**
     * @param minutes once, on a diesel
     * @param each minutes for every cylinder, on a diesel
     * @param cautions that stand before it on a diesel, besides the others
     */
    public record OnDiesel(double minutes, double each, List<String> cautions) {
        public OnDiesel {
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * @param chance that it was done badly and says nothing
     * @param when ways in which that happens
     */
    public record Badly(double chance, List<String> when) {
        public Badly {
            when = List.copyOf(when);
            if (!(chance >= 0 && chance <= 0.5)) {
                throw new IllegalArgumentException("a test is done badly with chance " + chance);
            }
        }
    }
}
