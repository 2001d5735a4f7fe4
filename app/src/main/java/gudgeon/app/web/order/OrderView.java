package gudgeon.app.web.order;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobOrder;
import gudgeon.app.desk.LayOut;
import gudgeon.app.desk.OldBesideNew;
import gudgeon.app.document.CompareWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.OrderWords;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.engine.Spend;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** What the order list of a job shows. */
public final class OrderView {
    private final Job job;
    private final JobOrder order;
    private final List<LayOut.Tool> lacking;
    private final Names names;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;
    private final Set<String> done = new LinkedHashSet<>();

    OrderView(
            Job job, List<LayOut.Tool> lacking, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.order = JobOrder.of(job);
        this.lacking = List.copyOf(lacking);
        this.names = new Names(job.engine());
        this.form = form;
        this.entries = entries;
        this.said = said;
        job.facts().stripped().acts().forEach(act -> done.add(act.operation()));
    }

    /** Tools that steps still open need and that are not there: "camshaft locking pin, 2 steps". */
    public List<String> lacking() {
        return lacking.stream()
                .map(tool -> tool.name() + ", " + Figures.count(tool.works().size(), "step"))
                .toList();
    }

    public String toolbox() {
        return JobPaths.job(job) + "/toolbox";
    }

    /**
     * One line.
     *
     * @param amount how many or how much
     * @param price of all, or empty when not known
     * @param used whether it was used up already, by what is undone
     * @param state "ordered 4, came 2"; empty when nothing was ordered
     * @param here whether all that is needed came
     * @param facts what can be compared with the old one
     * @param differs in what the new one was found to differ; empty when in nothing
     */
    public record Line(
            String spec,
            String amount,
            String count,
            String remark,
            String price,
            String uses,
            boolean used,
            String state,
            boolean here,
            List<OldBesideNew.Fact> facts,
            String differs) {
        public Line {
            facts = List.copyOf(facts);
        }
    }

    /** Lines of one sort. */
    public record Section(String name, List<Line> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    public Form form() {
        return form;
    }

    /** A name for the entry of one form. */
    public String entry() {
        return entries.get();
    }

    public SaidView said() {
        return said;
    }

    public String path() {
        return JobPaths.job(job) + "/order";
    }

    public List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        if (!order.spoilt().isEmpty()) {
            sections.add(new Section(
                    "Because of trouble",
                    order.spoilt().stream().map(this::spoilt).toList()));
        }
        for (OrderList.Section section : order.list().sections()) {
            sections.add(new Section(
                    OrderWords.heading(section.kind()),
                    section.lines().stream().map(this::line).toList()));
        }
        return sections;
    }

    private Line spoilt(Spend spend) {
        return new Line(
                spend.spec(),
                String.valueOf(spend.count()),
                String.valueOf(spend.count()),
                "",
                "",
                "drilled, snapped, rounded or missing",
                true,
                state(spend.spec()),
                came(spend.spec()) >= spend.count(),
                OldBesideNew.of(job, spend.spec()).facts(),
                differs(spend.spec()));
    }

    private Line line(OrderLine line) {
        int pieces = line.amount() instanceof Amount.Pieces(int count) ? count : 1;
        List<String> uses =
                line.uses().stream().map(use -> names.any(use.id())).distinct().toList();
        return new Line(
                line.spec(),
                OrderWords.amount(line.amount()),
                String.valueOf(pieces),
                OrderWords.remark(line.amount()),
                line.price().known() > 0 ? Figures.money(line.price().known()) : "",
                Figures.list(uses, 3),
                line.uses().stream().anyMatch(use -> done.contains(use.id())),
                state(line.spec()),
                came(line.spec()) >= pieces,
                line.amount() instanceof Amount.Pieces
                        ? OldBesideNew.of(job, line.spec()).facts()
                        : List.of(),
                differs(line.spec()));
    }

    private String differs(String spec) {
        return CompareWords.differences(OldBesideNew.differences(job, spec));
    }

    private int came(String spec) {
        return order.received().getOrDefault(spec, 0);
    }

    private String state(String spec) {
        int ordered = order.ordered().getOrDefault(spec, 0);
        int came = came(spec);
        if (ordered == 0 && came == 0) {
            return "";
        }
        return came >= ordered
                ? "here: " + came
                : "ordered " + ordered + (came > 0 ? ", here " + came : ", not here yet");
    }

    /** Ordered or here, and on no line of the list. */
    public List<String> others() {
        Set<String> listed = new LinkedHashSet<>();
        sections().forEach(section -> section.lines().forEach(line -> listed.add(line.spec())));
        Set<String> all = new LinkedHashSet<>(order.ordered().keySet());
        all.addAll(order.received().keySet());
        return all.stream()
                .filter(spec -> !listed.contains(spec))
                .map(spec -> spec + ", " + state(spec))
                .toList();
    }

    public String known() {
        return Figures.money(order.list().totals().knownPrice());
    }

    public int unpriced() {
        return order.list().totals().unpricedLines() + order.spoilt().size();
    }

    public int lines() {
        return order.list().totals().lines() + order.spoilt().size();
    }
}
