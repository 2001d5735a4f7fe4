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
    private final Map<String, Facts.Bag> bags = new LinkedHashMap<>();
    private final Map<String, UUID> lastCount = new HashMap<>();
    private final Map<String, String> marked = new LinkedHashMap<>();
    private final Map<String, String> renewed = new LinkedHashMap<>();
    private final Map<String, String> aids = new LinkedHashMap<>();
    private final Map<String, Integer> ordered = new LinkedHashMap<>();
    private final Map<String, Integer> received = new LinkedHashMap<>();
    private final Map<String, String> covered = new LinkedHashMap<>();
    private final Set<String> uncovered = new LinkedHashSet<>();
    private final Map<String, Facts.InAndOut> rags = new LinkedHashMap<>();
    private final Map<String, Facts.Litres> fluids = new LinkedHashMap<>();
    private final Map<String, OffsetDateTime> oiled = new LinkedHashMap<>();

    KeepingFold(List<Contradiction> contradictions) {
        this.contradictions = contradictions;
    }

    Facts.Kept kept() {
        return new Facts.Kept(bags, marked, renewed, aids, ordered, received);
    }

    Facts.Ledger ledger() {
        return new Facts.Ledger(covered, List.copyOf(uncovered), rags, fluids, oiled);
    }

    /** Fasteners of a joint go into a bag; they are in one bag only. */
    void found(Entry entry, Strip strip) {
        if (strip instanceof Strip.AsFound found && !found.bag().isEmpty()) {
            bags.replaceAll((name, bag) -> bag.without(found.joint()));
            bags.put(found.bag(), bag(found.bag()).holding(found.joint(), found.count()));
        }
    }

    private Facts.Bag bag(String name) {
        return bags.getOrDefault(name, Facts.Bag.named(name));
    }

    void add(Entry entry, Keeping keeping) {
        switch (keeping) {
            case Keeping.BagMade made -> {
                Facts.Bag bag = bag(made.bag());
                bags.put(
                        made.bag(),
                        new Facts.Bag(
                                made.bag(),
                                bag.joints(),
                                made.contents().isEmpty() ? bag.contents() : made.contents(),
                                made.place().isEmpty() ? bag.place() : made.place(),
                                bag.counts(),
                                bag.opened()));
            }
            case Keeping.BagOpened opened -> {
                Facts.Bag bag = bag(opened.bag());
                bags.put(
                        opened.bag(),
                        new Facts.Bag(
                                bag.bag(), bag.joints(), bag.contents(), bag.place(), bag.counts(), bag.opened() + 1));
            }
            case Keeping.BagMoved moved -> {
                Facts.Bag bag = bag(moved.bag());
                bags.put(
                        moved.bag(),
                        new Facts.Bag(
                                bag.bag(), bag.joints(), bag.contents(), moved.place(), bag.counts(), bag.opened()));
            }
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
        Facts.Bag bag = bag(counted.bag());
        UUID before = lastCount.put(counted.bag(), entry.id());
        if (before != null && !bag.counts().isEmpty() && bag.counts().getLast() != counted.count()) {
            contradictions.add(new Contradiction(Sort.COUNTS_DIFFER, entry.id(), List.of(before), counted.bag()));
        }
        List<Integer> counts = new ArrayList<>(bag.counts());
        counts.add(counted.count());
        bags.put(
                counted.bag(),
                new Facts.Bag(bag.bag(), bag.joints(), bag.contents(), bag.place(), counts, bag.opened()));
    }

    void fluid(Entry entry, Fluid fluid) {
        switch (fluid) {
            case Fluid.Drained drained -> {
                Facts.Litres before = litres(drained.circuit());
                List<String> to = new ArrayList<>(before.wasteTo());
                if (!drained.to().isEmpty()) {
                    to.add(drained.to());
                }
                fluids.put(
                        drained.circuit(), new Facts.Litres(before.drained() + drained.litres(), before.filled(), to));
            }
            case Fluid.Filled filled -> {
                Facts.Litres before = litres(filled.circuit());
                fluids.put(
                        filled.circuit(),
                        new Facts.Litres(before.drained(), before.filled() + filled.litres(), before.wasteTo()));
            }
            case Fluid.Oiled surface ->
                oiled.put(surface.surface(), entry.stamp().at());
        }
    }

    private Facts.Litres litres(String circuit) {
        return fluids.getOrDefault(circuit, new Facts.Litres(0, 0, List.of()));
    }
}
