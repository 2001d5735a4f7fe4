package gudgeon.core.ordering;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.quantity.Volume;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Goes through a plan step by step and gathers what each step makes necessary. Used once. */
final class Collecting {
    private final Engine engine;
    private final Map<String, Pieces> pieces = new LinkedHashMap<>();
    private final Map<String, Fluid> fluids = new LinkedHashMap<>();
    private final Map<String, List<OrderLine.Use>> compounds = new LinkedHashMap<>();
    private final Set<String> circuitsSeen = new LinkedHashSet<>();

    Collecting(Engine engine) {
        this.engine = engine;
    }

    /** Adds what one step of the plan destroys, spills or will need when it is put back. */
    void add(StripPlan.Operation operation) {
        for (Spend spend : operation.destroys()) {
            pieces.computeIfAbsent(spend.spec(), spec -> new Pieces()).add(operation, spend);
        }
        switch (operation.kind()) {
            case UNDO, CUT -> {
                Joint joint = engine.joint(operation.id());
                joint.freedom().opens().forEach(circuit -> addFluid(operation, engine.circuit(circuit)));
                addCompounds(operation, joint);
            }
            case DRAIN -> {
                engine.circuits().stream()
                        .filter(circuit -> circuit.drains().contains(operation.id()))
                        .forEach(circuit -> addFluid(operation, circuit));
                engine.ready(operation.id()).joint().ifPresent(plug -> addCompounds(operation, engine.joint(plug)));
            }
            case CRACK_LOOSE, RECORD, MAKE_SAFE, SUPPORT, STRAP, PIN, HOLDING_TOOL, LIFT -> {}
        }
    }

    private void addFluid(StripPlan.Operation operation, Circuit circuit) {
        if (circuit.fluid().isBlank() || !circuitsSeen.add(circuit.id())) {
            return;
        }
        fluids.computeIfAbsent(circuit.fluid(), fluid -> new Fluid()).add(operation, circuit);
    }

    private void addCompounds(StripPlan.Operation operation, Joint joint) {
        Set<String> specs = new LinkedHashSet<>();
        joint.makeup().sealant().ifPresent(sealant -> specs.add(sealant.spec()));
        for (Fastener fastener : joint.makeup().fasteners()) {
            if (boughtForLocking(fastener.locking()) && !destroyed(operation, fastener.locking())) {
                specs.add(fastener.locking());
            }
        }
        if (specs.isEmpty()) {
            joint.makeup().stages().forEach(stage -> {
                switch (stage.threadState()) {
                    case "locked" -> specs.add("thread-locking compound");
                    case "sealed" -> specs.add("thread sealant");
                    default -> {}
                }
            });
        }
        OrderLine.Use use = new OrderLine.Use(operation.number(), joint.id(), 0);
        specs.forEach(spec ->
                compounds.computeIfAbsent(spec, key -> new ArrayList<>()).add(use));
    }

    /** A compound, pin, tab or wire is bought; a locking nut or a serrated flange stays with its fastener. */
    private static boolean boughtForLocking(String locking) {
        String words = locking.toLowerCase(Locale.ROOT);
        return List.of("thread-lock", "thread lock", "thread-locking", "compound", "split pin", "tab", "wire").stream()
                .anyMatch(words::contains);
    }

    private static boolean destroyed(StripPlan.Operation operation, String spec) {
        return operation.destroys().stream().anyMatch(spend -> spend.spec().equals(spec));
    }

    List<OrderList.Section> sections() {
        Map<SectionKind, List<OrderLine>> lines = new LinkedHashMap<>();
        for (SectionKind kind : SectionKind.values()) {
            lines.put(kind, new ArrayList<>());
        }
        pieces.forEach((spec, found) -> in(lines, SectionKind.ofPiece(spec)).add(found.line(spec)));
        fluids.forEach((fluid, found) -> in(lines, SectionKind.FLUIDS).add(found.line(fluid)));
        compounds.forEach((spec, uses) -> in(lines, SectionKind.SEALANTS)
                .add(new OrderLine(spec, new Amount.AsNeeded(uses.size()), OrderLine.Price.NONE, uses)));
        return lines.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> new OrderList.Section(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static List<OrderLine> in(Map<SectionKind, List<OrderLine>> lines, SectionKind kind) {
        return lines.computeIfAbsent(kind, key -> new ArrayList<>());
    }

    /** Pieces of one specification. */
    private static final class Pieces {
        private final List<OrderLine.Use> uses = new ArrayList<>();
        private final Set<Double> prices = new LinkedHashSet<>();
        private int count;
        private int unpriced;
        private double known;

        void add(StripPlan.Operation operation, Spend spend) {
            uses.add(new OrderLine.Use(operation.number(), operation.id(), spend.count()));
            count += spend.count();
            spend.priceEach()
                    .ifPresentOrElse(
                            price -> {
                                prices.add(price);
                                known += price * spend.count();
                            },
                            () -> unpriced += spend.count());
        }

        OrderLine line(String spec) {
            OptionalDouble each = prices.size() == 1 && unpriced == 0
                    ? OptionalDouble.of(prices.iterator().next())
                    : OptionalDouble.empty();
            return new OrderLine(spec, new Amount.Pieces(count), new OrderLine.Price(each, known, unpriced), uses);
        }
    }

    /** One fluid over all circuits that hold it. */
    private static final class Fluid {
        private final List<OrderLine.Use> uses = new ArrayList<>();
        private double needed_l;
        private boolean complete = true;

        void add(StripPlan.Operation operation, Circuit circuit) {
            uses.add(new OrderLine.Use(operation.number(), circuit.id(), 0));
            needed_l += circuit.capacity().map(Volume::litres).orElse(0.0);
            complete &= circuit.capacity().isPresent();
        }

        OrderLine line(String fluid) {
            Amount amount = needed_l > 0 ? Amount.rounded(needed_l, complete) : new Amount.AsNeeded(uses.size());
            return new OrderLine(fluid, amount, OrderLine.Price.NONE, uses);
        }
    }
}
