package gudgeon.core.book;

import gudgeon.core.book.Facts.Contradiction;
import gudgeon.core.book.Facts.Contradiction.Sort;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** The part of the fold that knows where things are and what must balance. */
final class KeepingFold {
    private final List<Contradiction> contradictions;
    private final Map<String, BagSoFar> bags = new LinkedHashMap<>();
    /** By joint, the bag that its fasteners are in. */
    private final Map<String, BagSoFar> bagOf = new HashMap<>();

    private final Map<String, UUID> lastCount = new HashMap<>();
    private final Map<String, String> marked = new LinkedHashMap<>();
    private final Map<String, String> renewed = new LinkedHashMap<>();
    private final Map<String, String> aids = new LinkedHashMap<>();
    private final Map<String, Integer> ordered = new LinkedHashMap<>();
    private final Map<String, Integer> received = new LinkedHashMap<>();
    private final Map<String, Facts.Tool> tools = new LinkedHashMap<>();
    private final Map<String, Map<String, Keeping.Compared>> compared = new LinkedHashMap<>();
    private final Map<String, String> covered = new LinkedHashMap<>();
    private final Set<String> uncovered = new LinkedHashSet<>();
    private final Map<String, Facts.InAndOut> rags = new LinkedHashMap<>();
    private final Map<String, LitresSoFar> fluids = new LinkedHashMap<>();
    private final Map<String, OffsetDateTime> oiled = new LinkedHashMap<>();

    KeepingFold(List<Contradiction> contradictions) {
        this.contradictions = contradictions;
    }

    /** A bag, while the book is read. */
    private static final class BagSoFar {
        private final Map<String, Integer> joints = new LinkedHashMap<>();
        private final List<Integer> counts = new ArrayList<>();
        private String contents = "";
        private String place = "";
        private int opened;
    }

    /** Litres of a circuit, while the book is read. */
    private static final class LitresSoFar {
        private final List<String> wasteTo = new ArrayList<>();
        private double drained;
        private double filled;
    }

    Facts.Kept kept() {
        Map<String, Facts.Bag> all = new LinkedHashMap<>();
        bags.forEach((name, bag) ->
                all.put(name, new Facts.Bag(name, bag.joints, bag.contents, bag.place, bag.counts, bag.opened)));
        return new Facts.Kept(all, marked, renewed, aids, ordered, received, tools, compared);
    }

    Facts.Ledger ledger() {
        Map<String, Facts.Litres> litres = new LinkedHashMap<>();
        fluids.forEach((circuit, so) -> litres.put(circuit, new Facts.Litres(so.drained, so.filled, so.wasteTo)));
        return new Facts.Ledger(covered, List.copyOf(uncovered), rags, litres, oiled);
    }

    /** Fasteners of a joint go into a bag; they are in one bag only. */
    void found(Entry entry, Strip strip) {
        if (strip instanceof Strip.AsFound found && !found.bag().isEmpty()) {
            BagSoFar bag = bag(found.bag());
            BagSoFar before = bagOf.put(found.joint(), bag);
            if (before != null) {
                before.joints.remove(found.joint());
            }
            bag.joints.put(found.joint(), found.count());
        }
    }

    private BagSoFar bag(String name) {
        return bags.computeIfAbsent(name, written -> new BagSoFar());
    }

    void add(Entry entry, Keeping keeping) {
        switch (keeping) {
            case Keeping.BagMade made -> {
                BagSoFar bag = bag(made.bag());
                bag.contents = made.contents().isEmpty() ? bag.contents : made.contents();
                bag.place = made.place().isEmpty() ? bag.place : made.place();
            }
            case Keeping.BagOpened opened -> bag(opened.bag()).opened++;
            case Keeping.BagMoved moved -> bag(moved.bag()).place = moved.place();
            case Keeping.PartMoved moved -> {}
            case Keeping.Marked mark -> mark.parts().forEach(part -> marked.put(part, mark.how()));
            case Keeping.Renewed part -> renewed.put(part.part(), part.spec());
            case Keeping.Covered opening -> {
                covered.put(opening.opening(), opening.with());
                uncovered.remove(opening.opening());
            }
            case Keeping.Uncovered opening -> {
                if (covered.remove(opening.opening()) == null) {
                    tooMany(entry, opening.opening());
                }
                uncovered.add(opening.opening());
            }
            case Keeping.RagIn rag -> rag(entry, rag.where(), rag.count(), 0);
            case Keeping.RagOut rag -> rag(entry, rag.where(), 0, rag.count());
            case Keeping.AidFitted aid -> aids.put(aid.aid(), aid.about());
            case Keeping.AidRemoved aid -> {
                if (aids.remove(aid.aid()) == null) {
                    tooMany(entry, aid.aid());
                }
            }
            case Keeping.Counted counted -> counted(entry, counted);
            case Keeping.ToolMarked tool ->
                tools.put(tool.tool(), new Facts.Tool(tool, entry.stamp().at()));
            case Keeping.Compared fact ->
                compared.computeIfAbsent(fact.spec(), spec -> new LinkedHashMap<>())
                        .put(fact.fact(), fact);
            case Keeping.Ordered order -> ordered.merge(order.spec(), order.count(), Integer::sum);
            case Keeping.Received arrival -> received.merge(arrival.spec(), arrival.count(), Integer::sum);
        }
    }

    private void rag(Entry entry, String where, int in, int out) {
        Facts.InAndOut before = rags.getOrDefault(where, new Facts.InAndOut(0, 0));
        Facts.InAndOut after = new Facts.InAndOut(before.in() + in, before.out() + out);
        rags.put(where, after);
        if (out > 0 && after.left() < 0) {
            tooMany(entry, where);
        }
    }

    private void tooMany(Entry entry, String about) {
        contradictions.add(new Contradiction(Sort.MORE_OUT_THAN_IN, entry.id(), List.of(), about));
    }

    private void counted(Entry entry, Keeping.Counted counted) {
        BagSoFar bag = bag(counted.bag());
        UUID before = lastCount.put(counted.bag(), entry.id());
        if (before != null && !bag.counts.isEmpty() && bag.counts.getLast() != counted.count()) {
            contradictions.add(new Contradiction(Sort.COUNTS_DIFFER, entry.id(), List.of(before), counted.bag()));
        }
        bag.counts.add(counted.count());
    }

    void fluid(Entry entry, Fluid fluid) {
        switch (fluid) {
            case Fluid.Drained drained -> {
                LitresSoFar so = litres(drained.circuit());
                so.drained += drained.litres();
                if (!drained.to().isEmpty()) {
                    so.wasteTo.add(drained.to());
                }
            }
            case Fluid.Filled filled -> litres(filled.circuit()).filled += filled.litres();
            case Fluid.Oiled surface ->
                oiled.put(surface.surface(), entry.stamp().at());
        }
    }

    private LitresSoFar litres(String circuit) {
        return fluids.computeIfAbsent(circuit, id -> new LitresSoFar());
    }
}
