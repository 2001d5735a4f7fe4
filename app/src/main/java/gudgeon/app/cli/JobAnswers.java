package gudgeon.app.cli;

import gudgeon.app.desk.BuildBench;
import gudgeon.app.desk.ClosingUp;
import gudgeon.app.desk.FeaturePlaces;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.desk.JobOrder;
import gudgeon.app.desk.LayOut;
import gudgeon.app.desk.MeasuredFeature;
import gudgeon.app.desk.MeasuringList;
import gudgeon.app.desk.OldBesideNew;
import gudgeon.app.desk.Places;
import gudgeon.app.desk.Remembered;
import gudgeon.app.desk.Toolbox;
import gudgeon.app.desk.WasteLedger;
import gudgeon.app.desk.Watch;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.CompareWords;
import gudgeon.app.document.EntryWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.FluidWords;
import gudgeon.app.document.Names;
import gudgeon.app.document.ToolWords;
import gudgeon.app.format.PlainJson;
import gudgeon.core.book.JobState;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Answers about one job, as text or as JSON. */
final class JobAnswers {
    private final Screen screen;
    private final Layout layout;
    private final Job job;
    private final boolean json;
    private final Names names;

    JobAnswers(Screen screen, Job job, boolean json) {
        this.screen = screen;
        this.layout = new Layout(screen);
        this.job = job;
        this.json = json;
        this.names = new Names(job.engine());
    }

    private int asJson(Object answer) {
        screen.out().print(PlainJson.text(answer));
        return Exit.DONE;
    }

    int show() {
        if (json) {
            Map<String, Object> answer = JobJson.line(JobList.line(job));
            answer.put("target", job.facts().setting().target());
            answer.put("open", job.facts().stripped().open());
            answer.put("away", job.facts().stripped().away());
            answer.put("will_not_come", job.facts().setting().willNotCome());
            answer.put("minutes", job.facts().clocked().totalMinutes());
            answer.put("tags", Watch.tags(job));
            answer.put("troubles", job.facts().findings().troubles());
            answer.put("contradictions", job.facts().contradictions());
            return asJson(answer);
        }
        JobText text = new JobText(screen, job);
        text.where();
        text.next();
        return Exit.DONE;
    }

    int build() {
        BuildBench bench = new BuildBench(job);
        BuildPlan plan = bench.plan();
        if (json) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("job", job.id());
            List<Map<String, Object>> steps = new ArrayList<>();
            plan.operations().forEach(step -> steps.add(step(bench, step)));
            answer.put("operations", steps);
            answer.put("corrections", plan.corrections());
            return asJson(answer);
        }
        BuildWords words = new BuildWords(job.engine());
        for (BuildPlan.Operation step : plan.operations()) {
            String box = bench.isDone(step) ? "  x " : "  - ";
            layout.withFigure(box, 4, words.instruction(step) + "  [" + step.id() + "]", words.number(step));
            if (!bench.isDone(step)) {
                Remembered was = Remembered.inList(job, step);
                EntryWords.remembered(was.pieces(), was.words()).forEach(line -> layout.paragraph(6, "was: " + line));
            }
            words.lacks(step).forEach(lack -> layout.paragraph(6, lack, Ink.STRONG));
        }
        return Exit.DONE;
    }

    private static Map<String, Object> step(BuildBench bench, BuildPlan.Operation step) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", step.id());
        map.put("kind", step.kind());
        map.put("ref", step.subject().ref());
        map.put("done", bench.isDone(step));
        map.put("after", step.order().after());
        map.put("blocked_by", step.holdUp().blockedBy());
        map.put("was", Remembered.inList(bench.job(), step).words());
        map.put("turning", bench.turning(step).orElse(null));
        return map;
    }

    /** @param lacking tools that steps still open need and that are not there */
    int order(JobOrder order, List<LayOut.Tool> lacking) {
        if (json) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("list", order.list());
            answer.put("spoilt", order.spoilt());
            answer.put("ordered", order.ordered());
            answer.put("received", order.received());
            answer.put("tools_not_there", lacking.stream().map(JobJson::tool).toList());
            return asJson(answer);
        }
        new OrderText(screen).summary(job.engine(), order.list());
        order.spoilt().forEach(spend -> layout.line("  spoilt: " + spend.count() + " × " + spend.spec()));
        job.facts().kept().compared().keySet().forEach(spec -> {
            String differs = CompareWords.differences(OldBesideNew.differences(job, spec));
            if (!differs.isEmpty()) {
                layout.paragraph(2, "not like the old one: " + spec + ", " + differs, Ink.STRONG);
            }
        });
        order.ordered()
                .forEach((spec, count) -> layout.line("  ordered: " + count + " × " + spec + ", arrived "
                        + order.received().getOrDefault(spec, 0)));
        lacking.forEach(tool -> layout.paragraph(
                2,
                "needed and not there: " + tool.name() + ", "
                        + Figures.count(tool.works().size(), "step"),
                Ink.STRONG));
        return Exit.DONE;
    }

    /** What to lay out; tools that are not there first. */
    int tools(Toolbox toolbox, int minutes) {
        LayOut out = LayOut.of(job, toolbox, minutes);
        if (json) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("job", job.id());
            answer.put("minutes", minutes);
            answer.put("steps", out.today().size());
            answer.put("tools", out.tools().stream().map(JobJson::tool).toList());
            return asJson(answer);
        }
        out.missing().forEach(tool -> layout.paragraph(2, "not there: " + tool.name(), Ink.STRONG));
        out.tools().stream()
                .filter(tool -> !tool.missing())
                .forEach(tool -> layout.line("  " + tool.name()
                        + tool.said().map(said -> ", " + ToolWords.of(said)).orElse("")));
        layout.line("  for " + Figures.count(out.today().size(), "step") + " of " + out.left() + " in " + minutes
                + " minutes");
        return Exit.DONE;
    }

    /** What is left to measure, and what was read. */
    int measure(MeasuringList list) {
        if (json) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("job", job.id());
            answer.put("features", list.features().stream().map(JobAnswers::measured).toList());
            return asJson(answer);
        }
        new JobMeasureText(screen, job).list(list);
        return Exit.DONE;
    }

    private static Map<String, Object> measured(MeasuredFeature one) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", one.feature().id());
        map.put("name", one.feature().name());
        map.put("kind", one.feature().kind());
        map.put("instrument", new FeaturePlaces(one.feature()).usual());
        map.put("standing", one.standing());
        map.put("provisional", one.provisional());
        map.put("reachable", one.access().reachable());
        map.put("uncleaned", one.access().uncleaned());
        map.put("left", one.left());
        map.put("readings", one.read().values().stream().map(worth -> worth.reading()).toList());
        map.put("judged", one.sheet().map(sheet -> sheet.judged()).orElse(List.of()));
        return map;
    }

    int places() {
        Places places = Places.of(job);
        if (json) {
            return asJson(places);
        }
        places.bags().forEach(bag -> {
            List<String> contents = new ArrayList<>();
            bag.joints().forEach((joint, count) -> contents.add(count + " of " + names.any(joint)));
            if (!bag.contents().isBlank()) {
                contents.add(bag.contents());
            }
            layout.hanging("  bag " + bag.bag() + "  ", 8, Figures.list(contents) + place(bag.place()));
        });
        places.parts()
                .forEach(part -> layout.line("  " + names.any(part.part()) + place(part.place())
                        + (part.marked().isEmpty() ? "" : ", marked " + part.marked())));
        places.unbagged().forEach(joint -> layout.line("  in no bag: fasteners of " + names.any(joint)));
        layout.line("  next bag: " + places.nextBag());
        return Exit.DONE;
    }

    private static String place(String place) {
        return place.isBlank() ? "" : ", " + place;
    }

    int ledger(ClosingUp ledgers) {
        if (json) {
            asJson(ledgers);
            return ledgers.isBalanced() ? Exit.DONE : Exit.BLOCKED;
        }
        layout.heading("Fasteners");
        ledgers.fasteners()
                .forEach(hole -> layout.line(String.format(
                        Locale.ROOT,
                        "  %-40s out %3d   in %3d%s",
                        names.any(hole.joint()),
                        hole.out(),
                        hole.in(),
                        hole.bag().isEmpty() ? "" : "   bag " + hole.bag())));
        ledgers.rags()
                .forEach(rag -> layout.line("  rags, " + rag.where() + ": in " + rag.in() + ", out " + rag.out()));
        ledgers.litres()
                .forEach(litres -> layout.line("  " + names.any(litres.circuit()) + ": out "
                        + Figures.volume(litres.drained()) + ", in " + Figures.volume(litres.filled())));
        List<WasteLedger.Gone> waste = WasteLedger.of(job);
        if (!waste.isEmpty()) {
            layout.heading("Waste");
            waste.forEach(gone -> layout.paragraph(
                    2, FluidWords.gone(names.any(gone.circuit()), gone.to(), gone.litres(), gone.unmeasured())));
        }
        layout.heading(ledgers.isBalanced() ? "Everything balances" : "Not yet: what is missing");
        ledgers.missing()
                .forEach(missing -> layout.line("  "
                        + missing.sort().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ": "
                        + names.any(missing.about())));
        return ledgers.isBalanced() ? Exit.DONE : Exit.BLOCKED;
    }

    int book() {
        List<JobState.Told> history = job.state().history();
        if (json) {
            return asJson(history.stream()
                    .map(told -> {
                        Map<String, Object> entry = JobJson.entry(told.entry());
                        entry.put("counts", told.counts());
                        return entry;
                    })
                    .toList());
        }
        EntryWords words = new EntryWords(job.engine());
        for (JobState.Told told : history) {
            String lead = String.format(
                    Locale.ROOT,
                    "%4d  %tF %<tR  ",
                    told.entry().seq(),
                    told.entry().stamp().at());
            layout.hanging(lead, 6, (told.counts() ? "" : "struck through: ") + words.of(told.entry()));
            layout.paragraph(6, told.entry().id().toString(), Ink.SOFT);
        }
        return Exit.DONE;
    }

    int engine() {
        screen.out().print(job.ownEngine().text());
        return Exit.DONE;
    }
}
