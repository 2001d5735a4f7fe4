package gudgeon.core.book;

import gudgeon.core.book.Facts.Contradiction;
import gudgeon.core.book.Facts.Contradiction.Sort;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** The part of the fold that takes the engine apart. */
final class StripFold {
    private final List<Contradiction> contradictions;
    /** By operation; parts that came away by {@link #key}. */
    private final Map<String, Facts.Act> acts = new LinkedHashMap<>();
    /** Those of them that are parts that came away. */
    private final Map<String, Facts.Act> lifts = new LinkedHashMap<>();
    /** What is done now, and the entry that says so. */
    private final Map<String, UUID> open = new LinkedHashMap<>();

    private final Map<String, String> away = new LinkedHashMap<>();
    private final Set<String> aside = new LinkedHashSet<>();
    private final Map<String, FoundSoFar> found = new LinkedHashMap<>();
    private final Map<String, UUID> lastCount = new HashMap<>();
    private final List<Told> troubles = new ArrayList<>();
    private final Map<String, List<Told>> unsolved = new HashMap<>();
    private final Map<String, List<String>> conditions = new LinkedHashMap<>();
    private final Map<String, List<String>> routings = new LinkedHashMap<>();
    /** Withdrawn entries that said an operation was done, or that a joint gave trouble. */
    private final Map<String, UUID> lostDone = new HashMap<>();

    private final Map<String, UUID> lostTrouble = new HashMap<>();

    StripFold(List<Contradiction> contradictions) {
        this.contradictions = contradictions;
    }

    /** A joint as found, while the book is read. */
    private static final class FoundSoFar {
        private final List<Integer> counts = new ArrayList<>();
        private List<Strip.Piece> pieces = List.of();
        private String bag = "";
        private String differs = "";

        void add(Strip.AsFound as) {
            counts.add(as.count());
            pieces = as.pieces().isEmpty() ? pieces : as.pieces();
            bag = as.bag().isEmpty() ? bag : as.bag();
            differs = as.differs().isEmpty() ? differs : as.differs();
        }
    }

    /** A trouble, while the book is read. */
    private static final class Told {
        private final UUID entry;
        private final Fault.Trouble trouble;
        private final List<Fault.Rescue> tried = new ArrayList<>();

        Told(UUID entry, Fault.Trouble trouble) {
            this.entry = entry;
            this.trouble = trouble;
        }

        boolean isOf(Fault.Rescue rescue) {
            return rescue.fasteners().isEmpty()
                    || trouble.fasteners().isEmpty()
                    || trouble.fasteners().stream().anyMatch(rescue.fasteners()::contains);
        }

        Facts.TroubleSoFar soFar() {
            return new Facts.TroubleSoFar(
                    entry, trouble, tried, tried.isEmpty() ? Fault.Outcome.NO : tried.getLast().outcome());
        }
    }

    Facts.Stripped stripped() {
        return new Facts.Stripped(List.copyOf(acts.values()), List.copyOf(open.keySet()), away, List.copyOf(aside));
    }

    Facts.Findings findings() {
        Map<String, Facts.FoundJoint> joints = new LinkedHashMap<>();
        found.forEach((joint, so) ->
                joints.put(joint, new Facts.FoundJoint(joint, so.counts, so.pieces, so.bag, so.differs)));
        return new Facts.Findings(
                joints, troubles.stream().map(Told::soFar).toList(), lists(conditions), lists(routings));
    }

    private static Map<String, List<String>> lists(Map<String, List<String>> map) {
        Map<String, List<String>> fixed = new LinkedHashMap<>();
        map.forEach((key, list) -> fixed.put(key, List.copyOf(list)));
        return fixed;
    }

    /** An entry that no longer counts: what rests on it is told. */
    void lost(Entry entry) {
        switch (entry.body()) {
            case Strip.OperationDone done -> lostDone.put(done.operation(), entry.id());
            case Fault.Trouble trouble -> lostTrouble.put(trouble.joint(), entry.id());
            default -> {}
        }
    }

    void add(Entry entry, Strip strip) {
        switch (strip) {
            case Strip.OperationStarted started -> {}
            case Strip.OperationDone done -> done(entry, done);
            case Strip.PutBack back -> putBack(entry, back);
            case Strip.Removed removed -> removed(entry, removed);
            case Strip.AsFound as -> found(entry, as);
            case Strip.Routing routing ->
                routings.computeIfAbsent(routing.part(), part -> new ArrayList<>())
                        .add(routing.text());
        }
    }

    private void done(Entry entry, Strip.OperationDone done) {
        UUID before = open.putIfAbsent(done.operation(), entry.id());
        if (before != null) {
            contradictions.add(new Contradiction(Sort.ALREADY_OUT, entry.id(), List.of(before), done.operation()));
            return;
        }
        acts.remove(done.operation()); // done again, it stands at the end
        acts.put(done.operation(), new Facts.Act(entry.id(), done.operation(), done.cut(), List.of()));
        lostDone.remove(done.operation());
    }

    private void putBack(Entry entry, Strip.PutBack back) {
        boolean wasOpen = open.remove(back.operation()) != null;
        boolean wasAway = away.remove(back.operation()) != null;
        aside.remove(back.operation());
        if (!wasOpen && !wasAway) {
            contradictions.add(new Contradiction(Sort.NOT_OUT, entry.id(), List.of(), back.operation()));
        }
        acts.remove(back.operation());
        lifts.values().removeIf(lift -> {
            boolean allBack = lift.parts().stream().noneMatch(away::containsKey);
            if (allBack) {
                acts.remove(key(lift));
            }
            return allBack;
        });
    }

    /** No operation has a name of this form. */
    private static String key(Facts.Act lift) {
        return "lift " + lift.entry();
    }

    private void removed(Entry entry, Strip.Removed removed) {
        List<String> fresh =
                removed.parts().stream().filter(part -> !away.containsKey(part)).toList();
        removed.parts().forEach(part -> {
            away.put(part, removed.place());
            if (removed.aside()) {
                aside.add(part);
            } else {
                aside.remove(part);
            }
        });
        if (fresh.isEmpty()) {
            return; // it was away already and lies elsewhere, or hangs no more
        }
        Facts.Act lift = new Facts.Act(entry.id(), "", false, fresh);
        acts.put(key(lift), lift);
        lifts.put(key(lift), lift);
    }

    private void found(Entry entry, Strip.AsFound as) {
        FoundSoFar before = found.computeIfAbsent(as.joint(), joint -> new FoundSoFar());
        UUID countedBy = lastCount.put(as.joint(), entry.id());
        if (countedBy != null && before.counts.getLast() != as.count()) {
            contradictions.add(new Contradiction(Sort.COUNTS_DIFFER, entry.id(), List.of(countedBy), as.joint()));
        }
        before.add(as);
        rests(entry, as.joint(), lostDone);
    }

    /** Tells when an entry about a joint stands on one that was withdrawn. */
    private void rests(Entry entry, String joint, Map<String, UUID> lost) {
        UUID withdrawn = lost.get(joint);
        if (withdrawn != null && !open.containsKey(joint)) {
            contradictions.add(new Contradiction(Sort.RESTS_ON_WITHDRAWN, entry.id(), List.of(withdrawn), joint));
        }
    }

    void fault(Entry entry, Fault fault) {
        switch (fault) {
            case Fault.Trouble trouble -> {
                Told told = new Told(entry.id(), trouble);
                troubles.add(told);
                unsolved.computeIfAbsent(trouble.joint(), joint -> new ArrayList<>())
                        .add(told);
                lostTrouble.remove(trouble.joint());
            }
            case Fault.Rescue rescue -> rescue(entry, rescue);
            case Fault.Condition condition ->
                conditions
                        .computeIfAbsent(condition.part(), part -> new ArrayList<>())
                        .add(condition.text());
        }
    }

    private void rescue(Entry entry, Fault.Rescue rescue) {
        List<Told> left = unsolved.getOrDefault(rescue.joint(), List.of());
        for (int i = left.size() - 1; i >= 0; i--) {
            if (left.get(i).isOf(rescue)) {
                left.get(i).tried.add(rescue);
                if (rescue.outcome() != Fault.Outcome.NO) {
                    left.remove(i);
                }
                return;
            }
        }
        UUID withdrawn = lostTrouble.get(rescue.joint());
        if (withdrawn != null) {
            contradictions.add(
                    new Contradiction(Sort.RESTS_ON_WITHDRAWN, entry.id(), List.of(withdrawn), rescue.joint()));
        }
    }

    void moved(Keeping.PartMoved moved) {
        away.computeIfPresent(moved.part(), (part, place) -> moved.place());
    }

    // the way back takes things from here

    boolean isOpen(String operation) {
        return open.containsKey(operation);
    }

    void close(Entry entry, String operation) {
        if (open.remove(operation) == null) {
            rests(entry, operation, lostDone);
        }
    }

    /** All fasteners of a joint that had been put together are out again. */
    void reopen(Entry entry, String joint) {
        if (acts.containsKey(joint)) {
            open.putIfAbsent(joint, entry.id());
        }
    }

    void placed(List<String> parts) {
        parts.forEach(part -> {
            away.remove(part);
            aside.remove(part);
        });
    }
}
