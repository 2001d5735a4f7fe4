package gudgeon.app.desk;

import gudgeon.app.document.Bags;
import gudgeon.app.document.BookCsv;
import gudgeon.app.document.BuildSheet;
import gudgeon.app.document.Issue;
import gudgeon.app.document.LabelSheet;
import gudgeon.app.document.MeasuringSheet;
import gudgeon.app.document.Names;
import gudgeon.app.document.OrderCsv;
import gudgeon.app.document.OrderSheet;
import gudgeon.app.document.StepWords;
import gudgeon.app.document.StripCard;
import gudgeon.app.document.TargetWords;
import gudgeon.app.format.Cautions;
import gudgeon.core.book.Facts;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How is a job on paper, as it stands now?
 *
 * @param job the job
 * @param date the date of the sheets as it is to be printed
 */
public record JobPapers(Job job, String date) {
    private Issue issue() {
        return new Issue(job.name(), date);
    }

    /** What is left of the strip, to tick off, with the numbers that the next bags will have; empty when nothing is left. */
    public Optional<byte[]> stripCard() {
        return job.findPlan()
                .filter(plan -> !plan.operations().isEmpty())
                .map(plan -> StripCard.pdf(
                        job.engine(),
                        plan,
                        job.request().target(),
                        Bags.of(job.engine(), plan, job.nextBag()),
                        Cautions.catalogue(),
                        issue()));
    }

    /** The way back from what was really undone, its done steps crossed, its bags those of the book; empty when nothing was undone. */
    public Optional<byte[]> buildSheet() {
        BuildBench bench = new BuildBench(job);
        BuildPlan plan = bench.plan();
        if (plan.operations().isEmpty()) {
            return Optional.empty();
        }
        Set<String> done = new LinkedHashSet<>();
        plan.operations().stream().filter(bench::isDone).forEach(step -> done.add(step.id()));
        Map<String, String> bags = new LinkedHashMap<>();
        job.facts().kept().bags().values().forEach(bag -> bag.joints()
                .keySet()
                .forEach(joint -> bags.put(joint, bag.bag())));
        return Optional.of(BuildSheet.pdf(
                job.engine(), Bags.written(bags), plan, done, subject(), Cautions.catalogue(), issue()));
    }

    /** What to buy, to tick off. */
    public byte[] orderSheet() {
        JobOrder order = JobOrder.of(job);
        return OrderSheet.pdf(job.engine(), order.list(), order.spoilt(), subject(), issue());
    }

    /** What to buy, for a spreadsheet. */
    public String orderCsv() {
        JobOrder order = JobOrder.of(job);
        return OrderCsv.of(job.engine(), order.list(), order.spoilt());
    }

    /** The whole book, for a spreadsheet. */
    public String bookCsv() {
        return BookCsv.of(job.engine(), job.state().history());
    }

    /** What is left to measure, to fill by hand: what can be got at first, by instrument. */
    public byte[] measuringSheet(Gauges gauges) {
        MeasuringList list = MeasuringList.of(job, gauges);
        List<MeasuringSheet.Group> groups = new ArrayList<>();
        list.now().forEach((instrument, features) -> groups.add(
                new MeasuringSheet.Group(instrument, features.stream().map(JobPapers::toRead).toList())));
        if (!list.later().isEmpty()) {
            groups.add(new MeasuringSheet.Group(
                    "out of reach yet", list.later().stream().map(JobPapers::toRead).toList()));
        }
        return MeasuringSheet.pdf(job.engine(), groups, issue());
    }

    private static MeasuringSheet.Line toRead(MeasuredFeature one) {
        return new MeasuringSheet.Line(
                one.feature(), new FeaturePlaces(one.feature()).which().orElse(""), one.left());
    }

    /** Labels to cut apart; empty when there is nothing to label. */
    public Optional<byte[]> labelSheet() {
        List<LabelSheet.Label> labels = labels();
        return labels.isEmpty()
                ? Optional.empty()
                : Optional.of(LabelSheet.pdf(job.engine(), labels, issue()));
    }

    private String subject() {
        return TargetWords.of(job.engine(), job.request().target());
    }

    /** The bags that are there, then those that the plan will need, with the numbers they will get. */
    public List<LabelSheet.Label> labels() {
        Names names = new Names(job.engine());
        List<LabelSheet.Label> labels = new ArrayList<>();
        Places places = Places.of(job);
        places.bags().forEach(bag -> labels.add(new LabelSheet.Label(bag.bag(), contents(bag, names), true)));
        job.findPlan().ifPresent(plan -> coming(plan, places.nextBag(), names, labels));
        return labels;
    }

    /** "4 from head bolts", and what else is in a bag. */
    public static List<String> contents(Facts.Bag bag, Names names) {
        List<String> lines = new ArrayList<>();
        bag.joints().forEach((joint, count) -> lines.add(count + " from " + Names.withArticle(names.any(joint))));
        if (!bag.contents().isBlank()) {
            lines.add(bag.contents());
        }
        return lines;
    }

    private void coming(StripPlan plan, int next, Names names, List<LabelSheet.Label> labels) {
        Bags bags = Bags.of(job.engine(), plan, next);
        for (StripPlan.Operation step : plan.operations()) {
            bags.label(step.id()).ifPresent(bag -> {
                List<String> lines = new ArrayList<>();
                lines.add(Names.capital(names.any(step.id())));
                lines.addAll(StepWords.fasteners(job.engine().joint(step.id())));
                labels.add(new LabelSheet.Label(bag, lines, false));
            });
        }
    }
}
