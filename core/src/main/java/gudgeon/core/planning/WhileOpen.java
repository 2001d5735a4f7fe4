package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * While it is open: what each part costs more now, and what coming back for it alone would cost. Meanings:
 * docs/planning.md.
 *
 * @param now every part from the engine as the plan leaves it
 * @param later every part from the whole engine
 */
public record WhileOpen(EveryPart now, EveryPart later) {
    /** A part is nearly free when it costs at most this share of coming back for it. */
    public static final double NEARLY = 0.1;

    private static final StripRequest.Target NOTHING =
            new StripRequest.Target(List.of(), List.of(), List.of(), List.of());

    /** What now and later say of one part. */
    public record Line(String part, EveryPart.Reach now, EveryPart.Reach later) {
        /** Proven: doing it now saves so many seconds against coming back; empty when one of the two is not known. */
        public OptionalLong savesAtLeast() {
            OptionalLong most = mostNow();
            return most.isPresent() && later instanceof EveryPart.Reach.By by
                    ? OptionalLong.of(by.trip().both().atLeastSeconds() - most.getAsLong())
                    : OptionalLong.empty();
        }

        /** What it costs more now, there and back: a way that was found; empty when there is none or none was looked for. */
        public OptionalLong mostNow() {
            return switch (now) {
                case EveryPart.Reach.Off off -> OptionalLong.of(0);
                case EveryPart.Reach.By by -> by.trip().both().foundSeconds();
                case EveryPart.Reach.Never never -> OptionalLong.empty();
            };
        }

        /** Whether it costs little now against coming back for it, but not nothing. */
        public boolean nearlyFree() {
            OptionalLong most = mostNow();
            return now instanceof EveryPart.Reach.By
                    && most.isPresent()
                    && later instanceof EveryPart.Reach.By by
                    && most.getAsLong() <= NEARLY * by.trip().both().atLeastSeconds();
        }
    }

    /** One line for each part but the base, in file order. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < now.reaches().size(); i++) {
            EveryPart.Reach reach = now.reaches().get(i);
            lines.add(new Line(reach.part(), reach, later.reach(reach.part())));
        }
        return lines;
    }

    /** Lines of parts that cost something now, greatest proven saving first; those without one last. */
    public List<Line> bySaving() {
        return lines().stream()
                .filter(line -> line.now() instanceof EveryPart.Reach.By)
                .sorted((a, b) -> Long.compare(
                        b.savesAtLeast().orElse(Long.MIN_VALUE),
                        a.savesAtLeast().orElse(Long.MIN_VALUE)))
                .toList();
    }

    /** The engine as a plan leaves it, as a request. */
    public static StripRequest after(StripRequest request, StripPlan plan) {
        if (plan.operations().isEmpty()) {
            return new StripRequest(
                    NOTHING,
                    request.undone(),
                    request.done(),
                    request.willNotCome(),
                    request.means(),
                    request.underway());
        }
        List<String> undone = new ArrayList<>(request.undone());
        List<String> done = new ArrayList<>(request.done());
        for (StripPlan.Operation operation : plan.operations()) {
            switch (operation.kind()) {
                case UNDO, CUT -> undone.add(operation.id());
                case LIFT -> {}
                case CRACK_LOOSE, RECORD, MAKE_SAFE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL ->
                    done.add(operation.id());
            }
        }
        StripPlan.After left = plan.operations().getLast().after();
        List<String> away = new ArrayList<>(left.off());
        away.addAll(left.aside());
        return new StripRequest(
                NOTHING,
                undone,
                done,
                without(request.willNotCome(), undone),
                request.means(),
                java.util.Optional.of(new StripRequest.Underway(away)));
    }

    /** The whole engine, as a request: what will not come and is not undone meanwhile will not come then either. */
    public static StripRequest whole(StripRequest after) {
        return new StripRequest(
                NOTHING, List.of(), List.of(), without(after.willNotCome(), after.undone()), after.means());
    }

    private static List<String> without(List<String> all, List<String> some) {
        return all.stream().filter(id -> !some.contains(id)).toList();
    }
}
