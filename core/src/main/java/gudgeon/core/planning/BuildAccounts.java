package gudgeon.core.planning;

import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.BuildPlan.Account;
import gudgeon.core.planning.BuildPlan.AccountKind;
import gudgeon.core.planning.BuildPlan.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Accounts for everything that came off, went in or was used up in the strip. */
final class BuildAccounts {
    private final BuildNet net;
    private final IntPredicate heldUp;
    private final List<Account> accounts = new ArrayList<>();

    private BuildAccounts(BuildNet net, IntPredicate heldUp) {
        this.net = net;
        this.heldUp = heldUp;
    }

    /** @param heldUp whether a step is blocked or waits */
    static List<Account> of(BuildNet net, IntPredicate heldUp) {
        BuildAccounts result = new BuildAccounts(net, heldUp);
        for (int j : net.history.joints()) {
            result.joint(j);
        }
        for (int part = 0; part < net.model.parts; part++) {
            int lift = net.history.liftOf[part];
            if (lift >= 0) {
                result.add(AccountKind.PART, net.model.partId(part), Outcome.PLACED, "", net.place[lift]);
            }
        }
        for (int r : net.history.readyOperations()) {
            result.ready(r);
        }
        return result.accounts;
    }

    private void add(AccountKind kind, String id, Outcome outcome, String detail, int node) {
        String by = node < 0 ? "" : net.graph.node(node).id();
        accounts.add(new Account(kind, id, outcome, detail, by, node < 0 || !heldUp.test(node)));
    }

    private void joint(int j) {
        boolean cut = net.history.cut.get(j);
        for (Fastener fastener : net.joint(j).makeup().fasteners()) {
            Outcome outcome = cut || fastener.once().equals("all")
                    ? Outcome.RENEWED
                    : fastener.once().isEmpty() ? Outcome.REFITTED : Outcome.REFITTED_PART_NEW;
            String detail = outcome != Outcome.REFITTED_PART_NEW
                    ? ""
                    : fastener.once().equals("washers") ? String.join("; ", fastener.washers()) : fastener.once();
            add(AccountKind.FASTENER, fastener.id(), outcome, detail, net.last[j]);
        }
        for (Spend spend : BuildLacks.spends(net, j)) {
            add(AccountKind.SPEND, net.model.actionId(j), Outcome.RENEWED, spend.spec(), BuildLacks.asks(net, j));
        }
    }

    private void ready(int r) {
        Ready ready = Steps.ready(net.model, r);
        String id = net.model.actionId(r);
        if (ready.kind() == ReadyKind.DRAIN) {
            add(AccountKind.DRAIN_PLUG, id, Outcome.BACK_AT_ONCE, "", -1);
        } else if (ready.kind() != ReadyKind.CRACK_LOOSE) {
            Outcome outcome = net.restore[r] < 0
                    ? Outcome.NOTHING_TO_DO
                    : switch (ready.kind()) {
                        case SUPPORT, STRAP, PIN, HOLDING_TOOL -> Outcome.REMOVED;
                        case RECORD, MAKE_SAFE, DRAIN, CRACK_LOOSE -> Outcome.RESTORED;
                    };
            add(AccountKind.READY, id, outcome, "", net.restore[r]);
        }
        for (Spend spend : ready.effect().spends()) {
            add(AccountKind.SPEND, id, Outcome.RENEWED, spend.spec(), net.restore[r]);
        }
    }
}
