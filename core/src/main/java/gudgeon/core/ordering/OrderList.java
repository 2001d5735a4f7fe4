package gudgeon.core.ordering;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripPlan;
import java.util.List;

/**
 * Everything that must be bought to undo a plan and put the engine together again. The same plan gives the same list, line
 * by line: sections in the order of {@link SectionKind}, lines in the order in which the plan first needs them.
 *
 * @param sections sections that have lines
 * @param totals sums over all lines
 */
public record OrderList(List<Section> sections, Totals totals) {
    public OrderList {
        sections = List.copyOf(sections);
    }

    /** Lines of one kind; never empty. */
    public record Section(SectionKind kind, List<OrderLine> lines) {
        public Section {
            lines = List.copyOf(lines);
            if (lines.isEmpty()) {
                throw new IllegalArgumentException("a section has lines: " + kind);
            }
        }
    }

    /**
     * Sums over all lines.
     *
     * @param lines number of lines
     * @param pieces number of pieces bought singly
     * @param knownPrice sum of the prices that are known, in the currency of the engine file
     * @param unpricedLines lines with at least one piece, or a volume, without a price
     */
    public record Totals(int lines, int pieces, double knownPrice, int unpricedLines) {}

    /**
     * The order list of a plan.
     *
     * @throws IllegalArgumentException when the plan names a joint or ready operation that the engine does not have
     */
    public static OrderList of(Engine engine, StripPlan plan) {
        Collecting collecting = new Collecting(engine);
        plan.operations().forEach(collecting::add);
        return of(collecting.sections());
    }

    private static OrderList of(List<Section> sections) {
        List<OrderLine> lines =
                sections.stream().flatMap(section -> section.lines().stream()).toList();
        int pieces = 0;
        int unpricedLines = 0;
        double knownPrice = 0;
        for (OrderLine line : lines) {
            pieces += line.amount() instanceof Amount.Pieces(int count) ? count : 0;
            unpricedLines += line.price().unpriced() > 0 ? 1 : 0;
            knownPrice += line.price().known();
        }
        return new OrderList(sections, new Totals(lines.size(), pieces, knownPrice, unpricedLines));
    }

    /** All lines of all sections, in order. */
    public List<OrderLine> lines() {
        return sections.stream().flatMap(section -> section.lines().stream()).toList();
    }
}
