package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Zone;
import gudgeon.core.planning.BuildEvidence.Undone;
import gudgeon.core.planning.BuildPlan.Input;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.LackKind;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildReplay.Fault;
import gudgeon.core.planning.BuildReplay.Rule;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Looks at the order of the steps of a way back and the times between them. */
final class BuildReplayOrder {
    private final BuildEvidence told;

    BuildReplayOrder(BuildEvidence told) {
        this.told = told;
    }

    void stages() {
        told.undone().forEach(joint -> {
            List<Operation> turned = told.plan.operations().stream()
                    .filter(step -> Set.of(Kind.SNUG, Kind.TIGHTEN, Kind.STAGE, Kind.ANGLE)
                            .contains(step.kind()))
                    .filter(step -> step.subject().ref().equals(joint.id()))
                    .toList();
            List<String> ids = new ArrayList<>(List.of(joint.id() + "/snug"));
            for (int s = 1; s <= joint.makeup().stages().size(); s++) {
                ids.add(joint.id() + "/" + s);
            }
            if (joint.makeup().stages().isEmpty() && told.cracking(joint).isPresent()) {
                ids.add(joint.id() + "/tight");
            }
            if (!turned.stream().map(Operation::id).toList().equals(ids)) {
                told.faults.add(new Fault(Rule.STAGES, joint.id(), "its steps are not " + ids));
            }
            long whole =
                    turned.stream().mapToLong(step -> step.clock().seconds()).sum();
            if (whole != joint.work().buildSeconds()) {
                told.faults.add(new Fault(Rule.CLOCK, joint.id(), "its steps take " + whole));
            }
            for (Operation step : turned) {
                boolean bench = joint.between().stream().allMatch(part -> awayAt(part, step));
                String zone = bench ? Zone.BENCH : joint.work().zone();
                if (!step.place().zone().equals(zone)
                        || !step.place().tools().equals(joint.work().buildTools())) {
                    told.fault(Rule.CLOCK, step, "its zone is " + zone);
                }
                boolean licensed = joint.freedom().licensed();
                if (licensed) {
                    told.lacks(
                            step,
                            LackKind.LICENSED,
                            step == turned.getFirst()
                                    || step == turned.getLast()
                                    || step.holdUp().blockedBy().stream().anyMatch(l -> l.kind() == LackKind.LICENSED),
                            Rule.INPUT);
                }
            }
        });
    }

    private boolean awayAt(String part, Operation step) {
        return told.lifts.stream().anyMatch(set -> set.contains(part))
                && told.placing(part).map(told::at).orElse(0) > told.at(step);
    }

    void sealants() {
        told.undone().filter(joint -> joint.makeup().sealant().isPresent()).forEach(joint -> {
            Makeup.Sealant sealant = joint.makeup().sealant().orElseThrow();
            Optional<Operation> seal = told.find(joint.id() + "/seal");
            Optional<Operation> snug = told.find(joint.id() + "/snug");
            if (seal.isEmpty() || snug.isEmpty() || told.at(seal.get()) > told.at(snug.get())) {
                told.faults.add(new Fault(Rule.SEALANT, joint.id(), "no sealant goes on before it is put together"));
                return;
            }
            long open = snug.get().clock().startSeconds() - seal.get().clock().endSeconds();
            if (sealant.openSeconds() > 0 && open > sealant.openSeconds()) {
                told.fault(Rule.OPEN_TIME, snug.get(), "the sealant is open for " + open + " s");
            }
            Optional<Operation> closing = told.closing(joint);
            for (String part : joint.between()) {
                Optional<Operation> placing = told.awayThen(joint, part) ? Optional.empty() : told.placing(part);
                if (placing.isEmpty()) {
                    continue;
                }
                boolean after = told.onThread(joint) || !placing.equals(closing);
                if (after != told.at(placing.get()) < told.at(seal.get())) {
                    told.fault(Rule.SEALANT, seal.get(), "it goes on at the wrong time for placing " + part);
                }
            }
            cure(joint, sealant);
        });
    }

    private void cure(Joint joint, Makeup.Sealant sealant) {
        Optional<Operation> tight = told.last(joint.id());
        if (tight.isEmpty()) {
            told.faults.add(new Fault(Rule.STAGES, joint.id(), "it is never tight"));
            return;
        }
        Operation last = tight.get();
        for (Operation step : told.plan.operations()) {
            boolean fills = step.kind() == Kind.FILL
                    && joint.freedom().opens().contains(step.subject().ref());
            boolean primes = step.kind() == Kind.CHECK
                    && told.check(step.subject().ref()).kind().equals("prime")
                    && told.before(step)
                            .contains(last.id());
            if ((fills || primes) && step.clock().startSeconds() - last.clock().endSeconds() < sealant.cureSeconds()) {
                told.fault(Rule.CURE, step, "the sealant of " + joint.id() + " has not cured");
            }
        }
        long end = told.plan.totals().totalSeconds();
        long left = last.clock().endSeconds() + sealant.cureSeconds() - end;
        boolean listed = told.plan.cures().contains(new BuildPlan.Cure(joint.id(), left));
        if (listed != left > 0) {
            told.faults.add(new Fault(Rule.CURE, joint.id(), "at the end it cures for another " + left + " s"));
        }
    }

    void marks() {
        told.undone().forEach(joint -> {
            for (String mark : joint.makeup().after()) {
                told.reached(mark).ifPresent(step -> told.beforeStart(step, joint, Rule.MARK, mark));
            }
            for (int s = 0; s < joint.makeup().stages().size(); s++) {
                Optional<Operation> stage = told.find(joint.id() + "/" + (s + 1));
                for (String mark : joint.makeup().stages().get(s).after()) {
                    told.reached(mark).ifPresent(step -> stage.ifPresent(then -> told.ordered(step, then, Rule.MARK, mark)));
                }
            }
        });
    }

    void checks() {
        for (Check check : told.engine.rules().checks()) {
            boolean due = check.when().isEmpty() || check.when().stream().anyMatch(told.history::containsKey);
            Optional<Operation> done = told.find("check/" + check.id());
            if (due != done.isPresent()) {
                told.faults.add(new Fault(Rule.CHECK, check.id(), due ? "it is due" : "it is not due"));
            }
            if (done.isEmpty()) {
                continue;
            }
            Operation step = done.get();
            for (String mark : check.after()) {
                told.reached(mark).ifPresent(first -> {
                    told.ordered(first, step, Rule.CHECK, mark);
                    if (step.clock().startSeconds() - first.clock().endSeconds() < check.minLagSeconds()) {
                        told.fault(Rule.CHECK, step, "it comes too soon after " + mark);
                    }
                });
            }
            for (String mark : check.before()) {
                Rule rule = check.gate() ? Rule.GATE : Rule.CHECK;
                String id = mark.replace("/snug", "");
                if (told.engine.findJoint(id).isPresent()) {
                    if (told.history.containsKey(id)) {
                        told.beforeStart(step, told.engine.joint(id), rule, check.id());
                    }
                } else {
                    told.reached(mark).ifPresent(then -> told.ordered(step, then, rule, check.id()));
                }
            }
            if (step.order().gate() != check.gate()) {
                told.fault(Rule.GATE, step, "whether it is a gate is wrong");
            }
            told.lacks(step, LackKind.LIMIT_NOT_CONFIRMED, check.gate() && unconfirmed(check), Rule.GATE);
        }
    }

    private boolean unconfirmed(Check check) {
        return told.engine.features().stream()
                .filter(feature -> feature.id().matches(java.util.regex.Pattern.quote(check.id()) + "(-[0-9]+)?"))
                .filter(feature -> !told.request.confirmed().contains(feature.id()))
                .anyMatch(feature -> feature.limits().stream().anyMatch(Feature.Limit::typical));
    }

    void fills() {
        for (Circuit circuit : told.engine.circuits()) {
            List<Joint> opened = told.undone().filter(
                            joint -> joint.freedom().opens().contains(circuit.id()))
                    .toList();
            boolean due = !circuit.fluid().isEmpty()
                    && (!opened.isEmpty() || circuit.drains().stream().anyMatch(told.history::containsKey));
            Optional<Operation> fill = told.find("fill/" + circuit.id());
            Optional<Operation> bleed = told.find("bleed/" + circuit.id());
            if (due != fill.isPresent() || (due && !circuit.bleed().isEmpty()) != bleed.isPresent()) {
                told.faults.add(new Fault(Rule.FILL, circuit.id(), due ? "it is to be filled" : "it is not to be filled"));
            }
            fill.ifPresent(step -> {
                for (Joint joint : opened) {
                    told.last(joint.id()).ifPresent(last -> {
                        if (told.at(last) > told.at(step)) {
                            told.fault(Rule.FILL, step, joint.id() + " is not tight");
                        }
                    });
                }
                bleed.ifPresent(then -> told.ordered(step, then, Rule.FILL, "filling"));
                Operation ready = bleed.orElse(step);
                told.plan.operations().stream()
                        .filter(prime -> prime.kind() == Kind.CHECK
                                && told.check(prime.subject().ref()).kind().equals("prime"))
                        .filter(prime -> !told.before(ready)
                                .contains(prime.id()))
                        .forEach(prime -> told.ordered(ready, prime, Rule.FILL, "filling"));
                for (String safe : circuit.makeSafe()) {
                    told.find(safe + "/back")
                            .filter(back -> !told.before(step)
                                    .contains(back.id()))
                            .ifPresent(back -> told.ordered(step, back, Rule.FILL, "filling"));
                }
                Optional<Input> fluid = step.needs().inputs().stream().findFirst();
                if (fluid.isEmpty()
                        || !Optional.ofNullable(fluid.get().volume()).equals(circuit.capacity())
                        || !fluid.get().spec().equals(circuit.fluid())) {
                    told.fault(Rule.FILL, step, "the fluid or its volume is wrong");
                }
            });
        }
    }

    void takenBack() {
        for (Ready ready : told.engine.ready()) {
            Optional<Operation> back = told.find(ready.id() + "/back");
            if (back.isEmpty()) {
                continue;
            }
            told.undone().filter(joint -> uses(joint, ready))
                    .forEach(joint -> told.last(joint.id()).ifPresent(last -> {
                        if (told.at(last) > told.at(back.get())) {
                            told.fault(Rule.TAKEN_BACK_EARLY, back.get(), joint.id() + " is not tight");
                        }
                    }));
        }
    }

    private boolean uses(Joint joint, Ready ready) {
        Undone then = Optional.ofNullable(told.history.get(joint.id())).orElseThrow();
        Set<String> since = told.cracking(joint)
                .map(crack -> Optional.ofNullable(told.history.get(crack.id()))
                        .orElseThrow()
                        .ready())
                .orElse(then.ready());
        boolean own = since.contains(ready.id())
                && then.ready().contains(ready.id())
                && (joint.freedom().needs().contains(ready.id())
                        || joint.freedom().opens().stream()
                                .filter(id -> !joint.freedom().drains().contains(id))
                                .anyMatch(id -> told.engine.circuit(id).makeSafe().contains(ready.id())));
        boolean cracked = told.cracking(joint)
                .filter(crack -> crack.needs().contains(ready.id()))
                .filter(crack -> !Optional.ofNullable(told.history.get(crack.id()))
                        .orElseThrow()
                        .droppedNeeds()
                        .contains(ready.id()))
                .isPresent();
        return (own && !then.droppedNeeds().contains(ready.id())) || cracked;
    }

    void electricLast() {
        Set<String> electric = new LinkedHashSet<>();
        told.engine.circuits().stream()
                .filter(circuit -> circuit.kind() == CircuitKind.ELECTRIC)
                .forEach(circuit -> electric.addAll(circuit.makeSafe()));
        for (String id : electric) {
            told.find(id + "/back")
                    .ifPresent(back -> told.plan.operations().stream()
                            .filter(later -> later.kind() != Kind.WAIT && told.at(later) > told.at(back))
                            .filter(later -> !told.before(later)
                                    .contains(back.id()))
                            .forEach(later -> told.fault(Rule.ELECTRIC_LAST, back, later.id() + " could come before it")));
        }
    }
}
