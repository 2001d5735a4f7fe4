package gudgeon.app.web.toolbox;

import gudgeon.app.desk.BuildBench;
import gudgeon.app.desk.Job;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.page.Form;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to lay out for the time there is. */
public final class ToolboxView {
    private static final int SECONDS = 60;

    private final Job job;
    private final Form form;
    private final int minutes;
    private final List<Work> today = new ArrayList<>();
    private final int left;

    /** One step as far as it matters here. */
    private record Work(String instruction, String zone, List<String> tools, List<String> pieces, long seconds) {}

    /**
     * @param build the way back; empty while the engine comes apart
     */
    ToolboxView(Job job, Form form, int minutes, Optional<BuildBench> build) {
        this.job = job;
        this.form = form;
        this.minutes = minutes;
        List<Work> all = build.map(this::back).orElseGet(this::apart);
        this.left = all.size();
        long time = 0;
        for (Work work : all) {
            time += work.seconds();
            if (time > (long) minutes * SECONDS) {
                break;
            }
            today.add(work);
        }
    }

    private List<Work> apart() {
        Names names = new Names(job.engine());
        StepWords words = new StepWords(job.engine());
        List<Work> all = new ArrayList<>();
        job.findPlan().ifPresent(plan -> {
            for (StripPlan.Operation step : plan.operations()) {
                all.add(new Work(
                        words.instruction(step),
                        names.zone(step.place().zone()),
                        step.place().tools(),
                        List.of(),
                        step.seconds() + step.place().changeoverSeconds()));
            }
        });
        return all;
    }

    private List<Work> back(BuildBench bench) {
        Names names = new Names(job.engine());
        BuildWords words = new BuildWords(job.engine());
        List<Work> all = new ArrayList<>();
        for (BuildPlan.Operation step : bench.left()) {
            all.add(new Work(
                    words.instruction(step),
                    names.zone(step.place().zone()),
                    step.place().tools(),
                    words.inputs(step),
                    step.clock().seconds() + step.place().changeoverSeconds()));
        }
        return all;
    }

    /**
     * A tool.
     *
     * @param steps for how many steps;
     * @param first the first of them
     */
    public record Tool(String name, String steps, String first) {}

    public Form form() {
        return form;
    }

    public String path() {
        return JobPaths.job(job) + "/toolbox";
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    public int minutes() {
        return minutes;
    }

    public int steps() {
        return today.size();
    }

    public int left() {
        return left;
    }

    public String time() {
        return Figures.time(today.stream().mapToLong(Work::seconds).sum());
    }

    /** The first and the last of today's steps. */
    public String last() {
        return today.isEmpty() ? "" : today.getLast().instruction();
    }

    public List<Tool> tools() {
        Map<String, List<Work>> byTool = new LinkedHashMap<>();
        for (Work work : today) {
            work.tools()
                    .forEach(tool -> byTool.computeIfAbsent(tool, key -> new ArrayList<>())
                            .add(work));
        }
        List<Tool> tools = new ArrayList<>();
        byTool.forEach((tool, works) -> tools.add(new Tool(
                tool, Figures.count(works.size(), "step"), works.getFirst().instruction())));
        return tools;
    }

    /** New pieces and fluids to have in hand. */
    public List<String> pieces() {
        return today.stream().flatMap(work -> work.pieces().stream()).distinct().toList();
    }

    public List<String> zones() {
        return today.stream().map(Work::zone).distinct().toList();
    }
}
