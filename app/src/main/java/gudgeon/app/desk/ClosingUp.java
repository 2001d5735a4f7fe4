package gudgeon.app.desk;

import gudgeon.core.book.Build;
import gudgeon.core.book.Facts;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * May the engine be closed up? Only when everything balances: fasteners out and in by hole and bag, parts, openings, rags,
 * litres, supports and pins, checks. What is missing is named.
 *
 * @param fasteners every joint that was undone: how many came out, how many are back, and the bag
 * @param rags every place that rags or plugs went into
 * @param litres every circuit that was drained, opened or filled
 * @param missing what does not balance; empty when the engine may be closed
 */
public record ClosingUp(List<Hole> fasteners, List<Rags> rags, List<Filled> litres, List<Missing> missing) {
    /** A filling within this share of the capacity balances (common practice: what stays in pockets). */
    private static final double TOLERANCE = 0.15;

    private static final String CHECK = "closing-up";

    public ClosingUp {
        fasteners = List.copyOf(fasteners);
        rags = List.copyOf(rags);
        litres = List.copyOf(litres);
        missing = List.copyOf(missing);
    }

    /** Fasteners of one joint. @param byFile how many the file has; @param bag empty when none was said */
    public record Hole(String joint, int byFile, int out, int in, String bag) {}

    /** Rags and plugs of one place. */
    public record Rags(String where, int in, int out) {}

    /** Litres of one circuit. @param capacity by the file; empty when not known */
    public record Filled(String circuit, double drained, double filled, Optional<Double> capacity) {}

    /**
     * Something that does not balance.
     *
     * @param about joint, part, bag, opening, place, circuit, preparation or check
     * @param want how much there should be
     * @param have how much there is
     */
    public record Missing(Sort sort, String about, double want, double have) {
        /** Sorts of thing that must balance. */
        public enum Sort {
            /** Fasteners of a joint are out. */
            FASTENERS_OUT,
            /** A joint without fasteners of its own is not together. */
            STILL_APART,
            /** Fewer were counted than the file has, and nobody has put the file right. */
            FASTENERS_FEWER,
            /** A bag was counted and holds another number than went in. */
            BAG_COUNT,
            /** A joint is put together and not tight. */
            NOT_TIGHT,
            PART_AWAY,
            /** An opening is still covered. */
            COVERED,
            /** Rags or plugs are still in. */
            RAGS_IN,
            NOT_FILLED,
            /** More or less went in than the circuit holds. */
            LITRES,
            /** A support, strap or pin is still fitted, or a circuit still made safe. */
            STILL_FITTED,
            /** A check is not signed. */
            NOT_SIGNED,
            /** A fastener still gives trouble. */
            TROUBLE
        }
    }

    /** Whether everything balances. */
    public boolean isBalanced() {
        return missing.isEmpty();
    }

    /** The ledgers of a job. */
    public static ClosingUp of(Job job) {
        List<Missing> missing = new ArrayList<>();
        List<Hole> holes = holes(job, missing);
        bags(job, missing);
        Facts facts = job.facts();
        facts.stripped().away().keySet().forEach(part -> missing.add(new Missing(Missing.Sort.PART_AWAY, part, 0, 1)));
        facts.ledger()
                .covered()
                .keySet()
                .forEach(opening -> missing.add(new Missing(Missing.Sort.COVERED, opening, 0, 1)));
        List<Rags> rags = rags(facts, missing);
        List<Filled> litres = litres(job, missing);
        facts.kept().aids().keySet().forEach(aid -> missing.add(new Missing(Missing.Sort.STILL_FITTED, aid, 0, 1)));
        stepsLeft(job, missing);
        facts.findings().troubles().stream()
                .filter(trouble -> !trouble.solved())
                .forEach(trouble -> missing.add(
                        new Missing(Missing.Sort.TROUBLE, trouble.trouble().joint(), 0, 1)));
        return new ClosingUp(holes, rags, litres, missing);
    }

    private static List<Hole> holes(Job job, List<Missing> missing) {
        List<Hole> holes = new ArrayList<>();
        Facts facts = job.facts();
        for (Facts.Act act : facts.stripped().acts()) {
            Optional<Joint> joint = job.engine().findJoint(act.operation());
            if (joint.isEmpty()) {
                plug(job, act.operation()).ifPresent(holes::add);
                continue;
            }
            int byFile = joint.get().makeup().fasteners().size();
            int out = job.fasteners(act.operation());
            boolean open = facts.stripped().open().contains(act.operation());
            Facts.FoundJoint found = facts.findings().joints().get(act.operation());
            holes.add(new Hole(act.operation(), byFile, out, open ? 0 : out, found == null ? "" : found.bag()));
            if (open) {
                missing.add(
                        out > 0
                                ? new Missing(Missing.Sort.FASTENERS_OUT, act.operation(), out, 0)
                                : new Missing(Missing.Sort.STILL_APART, act.operation(), 1, 0));
            }
            if (out < byFile) {
                missing.add(new Missing(Missing.Sort.FASTENERS_FEWER, act.operation(), byFile, out));
            }
        }
        return holes;
    }

    /** The plug of a drain, out and back at once (decision 0026); empty for other operations, and when its joint is undone. */
    private static Optional<Hole> plug(Job job, String operation) {
        return job.engine()
                .findReady(operation)
                .filter(ready -> ready.kind() == ReadyKind.DRAIN)
                .flatMap(ready -> ready.joint().flatMap(job.engine()::findJoint))
                .filter(joint -> !joint.makeup().fasteners().isEmpty())
                .filter(joint -> job.facts().stripped().acts().stream()
                        .noneMatch(act -> act.operation().equals(joint.id())))
                .map(joint -> {
                    int count = joint.makeup().fasteners().size();
                    return new Hole(joint.id(), count, count, count, "");
                });
    }

    private static void bags(Job job, List<Missing> missing) {
        job.facts().kept().bags().values().forEach(bag -> {
            int holds = bag.joints().entrySet().stream()
                    .filter(joint -> job.facts().stripped().open().contains(joint.getKey()))
                    .mapToInt(joint -> joint.getValue())
                    .sum();
            if (!bag.counts().isEmpty() && bag.counts().getLast() != holds && holds > 0) {
                missing.add(new Missing(
                        Missing.Sort.BAG_COUNT, bag.bag(), holds, bag.counts().getLast()));
            }
        });
    }

    private static List<Rags> rags(Facts facts, List<Missing> missing) {
        List<Rags> rags = new ArrayList<>();
        facts.ledger().rags().forEach((where, count) -> {
            rags.add(new Rags(where, count.in(), count.out()));
            if (count.left() != 0) {
                missing.add(new Missing(Missing.Sort.RAGS_IN, where, count.in(), count.out()));
            }
        });
        return rags;
    }

    private static List<Filled> litres(Job job, List<Missing> missing) {
        List<Filled> all = new ArrayList<>();
        for (Circuit circuit : job.engine().circuits()) {
            Facts.Litres litres = job.facts().ledger().fluids().get(circuit.id());
            if (litres == null) {
                continue;
            }
            Optional<Double> capacity = circuit.capacity().map(volume -> volume.litres());
            all.add(new Filled(circuit.id(), litres.drained(), litres.filled(), capacity));
            boolean measured = litres.filled() > 0;
            double want = litres.drained() > 0 ? litres.drained() : capacity.orElse(0.0);
            if (litres.drained() > 0 && !measured) {
                missing.add(new Missing(Missing.Sort.NOT_FILLED, circuit.id(), want, 0));
            } else if (measured && want > 0) {
                double most = Math.max(want, capacity.orElse(want)) * (1 + TOLERANCE);
                if (litres.filled() < want * (1 - TOLERANCE) || litres.filled() > most) {
                    missing.add(new Missing(Missing.Sort.LITRES, circuit.id(), want, litres.filled()));
                }
            }
        }
        return all;
    }

    private static void stepsLeft(Job job, List<Missing> missing) {
        for (BuildPlan.Operation step : new BuildBench(job).left()) {
            String ref = step.subject().ref();
            switch (step.kind()) {
                case STAGE, ANGLE, TIGHTEN -> {
                    Missing tight = new Missing(Missing.Sort.NOT_TIGHT, ref, 0, 0);
                    if (!missing.contains(tight)) {
                        missing.add(tight);
                    }
                }
                case FILL -> {
                    if (missing.stream().noneMatch(other -> other.about().equals(ref))) {
                        missing.add(new Missing(Missing.Sort.NOT_FILLED, ref, 0, 0));
                    }
                }
                case RESTORE -> missing.add(new Missing(Missing.Sort.STILL_FITTED, ref, 0, 1));
                case CHECK -> missing.add(new Missing(Missing.Sort.NOT_SIGNED, ref, 1, 0));
                case SEAL, PLACE, SNUG, BLEED, WAIT -> {}
            }
        }
    }

    /** Closes the engine up: signed when everything balances, refused otherwise. */
    public record Close(String note) implements Deed {
        @Override
        public Telling tell(Job job) {
            List<FieldProblem> problems = new ArrayList<>(Checks.text("note", note));
            of(job).missing()
                    .forEach(missing -> problems.add(new FieldProblem(
                            "ledger",
                            FieldProblem.Kind.NOT_BALANCED,
                            missing.about(),
                            List.of(missing.sort().name()),
                            "")));
            if (job.facts().built().signed().contains(CHECK)) {
                problems.add(FieldProblem.of("ledger", FieldProblem.Kind.ALREADY_DONE, ""));
            }
            return problems.isEmpty()
                    ? Telling.facts(new Build.CheckSigned(CHECK, note.strip()))
                    : new Telling.Wrong(problems);
        }
    }

    /** Whether the engine of a job was closed up. */
    public static boolean isClosed(Job job) {
        return job.facts().built().signed().contains(CHECK);
    }
}
