package gudgeon.core.planning;

import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.planning.BuildPlan.Account;
import gudgeon.core.planning.BuildPlan.AccountKind;
import gudgeon.core.planning.BuildPlan.Input;
import gudgeon.core.planning.BuildPlan.LackKind;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildPlan.Outcome;
import gudgeon.core.planning.BuildReplay.Fault;
import gudgeon.core.planning.BuildReplay.Rule;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Looks at what a way back uses up and accounts for. */
final class BuildReplayAccounts {
    private final BuildEvidence told;

    BuildReplayAccounts(BuildEvidence told) {
        this.told = told;
    }

    void inputs() {
        Map<String, Integer> wanted = new HashMap<>();
        Map<String, Integer> asked = new HashMap<>();
        told.undone().forEach(joint -> {
            told.spends(joint).forEach(spend -> wanted.merge(joint.id() + " " + spend.spec(), spend.count(), Integer::sum));
            joint.makeup()
                    .sealant()
                    .ifPresent(sealant -> wanted.merge(joint.id() + " " + sealant.spec(), 1, Integer::sum));
        });
        for (Operation step : told.plan.operations()) {
            for (Input input : step.needs().inputs()) {
                Optional<Joint> joint = told.engine.findJoint(input.joint());
                joint.ifPresent(j -> asked.merge(j.id() + " " + input.spec(), input.count(), Integer::sum));
                joint.flatMap(j -> told.find(j.id() + "/snug")).ifPresent(snug -> {
                    if (told.at(step) > told.at(snug)) {
                        told.fault(Rule.INPUT, step, input.spec() + " is asked for too late");
                    }
                });
            }
            told.lacks(
                    step,
                    LackKind.NOT_IN_HAND,
                    step.needs().inputs().stream()
                            .anyMatch(input -> told.request.missing().contains(input.spec())),
                    Rule.INPUT);
        }
        if (!wanted.equals(asked)) {
            told.faults.add(new Fault(Rule.INPUT, "", "wanted " + wanted + ", asked " + asked));
        }
    }

    void accounts() {
        Map<String, Integer> expected = new HashMap<>();
        told.undone().forEach(joint -> {
            for (Fastener fastener : joint.makeup().fasteners()) {
                Outcome outcome = told.cut.contains(joint.id()) || fastener.once().equals("all")
                        ? Outcome.RENEWED
                        : fastener.once().isEmpty() ? Outcome.REFITTED : Outcome.REFITTED_PART_NEW;
                expected.merge(AccountKind.FASTENER + " " + fastener.id() + " " + outcome, 1, Integer::sum);
            }
            told.spends(joint)
                    .forEach(spend -> expected.merge(
                            AccountKind.SPEND + " " + joint.id() + " " + Outcome.RENEWED, 1, Integer::sum));
        });
        told.lifts.forEach(set -> set.forEach(
                part -> expected.merge(AccountKind.PART + " " + part + " " + Outcome.PLACED, 1, Integer::sum)));
        for (Ready ready : told.engine.ready()) {
            if (!told.history.containsKey(ready.id())) {
                continue;
            }
            ready.effect()
                    .spends()
                    .forEach(spend -> expected.merge(
                            AccountKind.SPEND + " " + ready.id() + " " + Outcome.RENEWED, 1, Integer::sum));
            Optional<String> entry = switch (ready.kind()) {
                case DRAIN -> Optional.of(AccountKind.DRAIN_PLUG + " " + ready.id() + " " + Outcome.BACK_AT_ONCE);
                case CRACK_LOOSE -> Optional.empty();
                case SUPPORT, STRAP, PIN, HOLDING_TOOL ->
                    Optional.of(AccountKind.READY + " " + ready.id() + " " + Outcome.REMOVED);
                case RECORD, MAKE_SAFE ->
                    Optional.of(AccountKind.READY + " " + ready.id() + " "
                            + (ready.effect().restore().isEmpty() ? Outcome.NOTHING_TO_DO : Outcome.RESTORED));
            };
            entry.ifPresent(key -> expected.merge(key, 1, Integer::sum));
        }
        Map<String, Integer> found = new HashMap<>();
        for (Account account : told.plan.accounts()) {
            found.merge(account.kind() + " " + account.id() + " " + account.outcome(), 1, Integer::sum);
            Optional<Operation> by = told.find(account.by());
            boolean heldUp = by.map(Operation::holdUp)
                    .filter(holdUp -> !holdUp.equals(BuildPlan.HoldUp.NONE))
                    .isPresent();
            if ((!account.by().isEmpty() && by.isEmpty()) || account.settled() == heldUp) {
                told.faults.add(new Fault(Rule.ACCOUNT, account.id(), "it is settled by no such step, or not settled"));
            }
        }
        if (!expected.equals(found)) {
            Map<String, Integer> lost = new HashMap<>(expected);
            found.keySet().forEach(lost::remove);
            told.faults.add(new Fault(
                    Rule.ACCOUNT, "", "accounted for " + found.size() + " of " + expected.size() + ", lost " + lost));
        }
    }
}
