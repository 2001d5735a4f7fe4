package gudgeon.app.web.measuring;

import gudgeon.app.desk.FeaturePlaces;
import gudgeon.app.desk.Gauges;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.MeasuredFeature;
import gudgeon.app.desk.MeasuringList;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.measuring.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** What is left to measure. */
public final class MeasuringView {
    private final Job job;
    private final MeasuringList list;
    private final Gauges gauges;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;
    private final Names names;

    MeasuringView(Job job, MeasuringList list, Gauges gauges, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.list = list;
        this.gauges = gauges;
        this.form = form;
        this.entries = entries;
        this.said = said;
        this.names = new Names(job.engine());
    }

    /**
     * A feature in the list.
     *
     * @param state one or two words
     * @param style beyond, close, within, open
     */
    public record Row(String name, String path, String where, String state, String style) {}

    /** Features read with one instrument. */
    public record Group(String instrument, List<Row> rows) {}

    /** An instrument of one's own. */
    public record Own(String name, String words) {}

    public SaidView said() {
        return said;
    }

    public Form form() {
        return form;
    }

    public String entry() {
        return entries.get();
    }

    public String path() {
        return MeasuringPaths.list(job);
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    public List<Group> now() {
        List<Group> groups = new ArrayList<>();
        list.now()
                .forEach((instrument, features) -> groups.add(new Group(
                        Names.capital(instrument),
                        features.stream().map(this::row).toList())));
        return groups;
    }

    public List<Row> later() {
        return list.later().stream().map(this::row).toList();
    }

    public List<Row> done() {
        return list.done().stream().map(this::row).toList();
    }

    public int edition() {
        return job.facts().gauged().edition();
    }

    public boolean anyReading() {
        return !job.facts().gauged().readings().isEmpty();
    }

    /** Instruments that were described. */
    public List<Own> own() {
        return gauges.described().keySet().stream()
                .map(name -> {
                    Instrument one = gauges.find(name).orElseThrow();
                    return new Own(
                            name,
                            "shows " + Figures.plain(one.resolution_mm()) + " mm, errs by at most "
                                    + Figures.plain(one.maximumError_mm()) + " mm"
                                    + one.check()
                                            .map(check -> ", checked " + check.daysAgo() + " days ago")
                                            .orElse(""));
                })
                .toList();
    }

    private Row row(MeasuredFeature one) {
        FeaturePlaces places = new FeaturePlaces(one.feature());
        String where =
                Figures.list(one.feature().parts().stream().map(names::part).toList(), 2);
        return new Row(
                one.feature().name(),
                MeasuringPaths.feature(job, one.feature().id()),
                where + ", " + toRead(one, places),
                FeatureView.state(one),
                FeatureView.style(one));
    }

    private static String toRead(MeasuredFeature one, FeaturePlaces places) {
        if (places.which().isPresent()) {
            return Figures.count(one.read().size(), "reading") + ", each "
                    + places.which().get();
        }
        int all = places.all().size();
        return one.read().isEmpty()
                ? Figures.count(all, "place")
                : one.left().isEmpty()
                        ? "all read"
                        : one.left().size() + " of " + Figures.count(all, "place") + " left";
    }
}
