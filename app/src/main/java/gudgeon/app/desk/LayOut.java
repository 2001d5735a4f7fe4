package gudgeon.app.desk;

import gudgeon.core.book.Keeping;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What to lay out for the steps that fit into the time there is, by their usual times.
 *
 * @param today those steps, in order
 * @param left how many steps are left in all
 * @param tools what they need, in the order of first need
 */
public record LayOut(List<Work> today, int left, List<Tool> tools) {
    /** The time there is when nobody says how long. */
    public static final int USUAL_MINUTES = 90;

    /** Shorter is no session, longer is no day. */
    public static final int SHORTEST = TodayQuestion.SHORTEST;

    public static final int LONGEST = TodayQuestion.LONGEST;

    private static final long SECONDS = 60;

    public LayOut {
        today = List.copyOf(today);
        tools = List.copyOf(tools);
    }

    /** A step of the strip or of the way back; one of the two is there. */
    public record Work(
            Optional<StripPlan.Operation> strip,
            Optional<BuildPlan.Operation> build,
            String zone,
            List<String> tools,
            long seconds) {
        public Work {
            tools = List.copyOf(tools);
        }
    }

    /**
     * A tool.
     *
     * @param works the steps that need it
     * @param said the last word on it; empty when nobody said whether it is there
     */
    public record Tool(String name, List<Work> works, Optional<Keeping.ToolMarked> said) {
        public Tool {
            works = List.copyOf(works);
        }

        /** Whether it is known not to be there. */
        public boolean missing() {
            return said.filter(word -> word.whose() == Keeping.Whose.MISSING).isPresent();
        }
    }

    /** What to lay out for so many minutes. */
    public static LayOut of(Job job, Toolbox toolbox, int minutes) {
        List<Work> all = open(job);
        List<Work> today = new ArrayList<>();
        long time = 0;
        for (Work work : all) {
            time += work.seconds();
            if (time > minutes * SECONDS) {
                break;
            }
            today.add(work);
        }
        return new LayOut(today, all.size(), tools(today, toolbox));
    }

    /** Tools that any step still open needs, and that are known not to be there. */
    public static List<Tool> lacking(Job job, Toolbox toolbox) {
        return tools(open(job), toolbox).stream().filter(Tool::missing).toList();
    }

    private static List<Tool> tools(List<Work> works, Toolbox toolbox) {
        Map<String, List<Work>> byTool = new LinkedHashMap<>();
        works.forEach(work -> work.tools()
                .forEach(tool ->
                        byTool.computeIfAbsent(tool, name -> new ArrayList<>()).add(work)));
        List<Tool> tools = new ArrayList<>();
        byTool.forEach((tool, needing) -> tools.add(new Tool(tool, needing, toolbox.find(tool))));
        return tools;
    }

    /** All steps that are left in the strip, or on the way back. */
    private static List<Work> open(Job job) {
        Job.Stage stage = job.stage();
        boolean building = stage == Job.Stage.STRIPPED || stage == Job.Stage.BUILDING || stage == Job.Stage.TOGETHER;
        return building ? back(new BuildBench(job)) : apart(job);
    }

    private static List<Work> apart(Job job) {
        return job.findPlan().map(StripPlan::operations).orElse(List.of()).stream()
                .map(step -> new Work(
                        Optional.of(step),
                        Optional.empty(),
                        step.place().zone(),
                        step.place().tools(),
                        step.seconds() + step.place().changeoverSeconds()))
                .toList();
    }

    private static List<Work> back(BuildBench bench) {
        return bench.left().stream()
                .map(step -> new Work(
                        Optional.empty(),
                        Optional.of(step),
                        step.place().zone(),
                        step.place().tools(),
                        step.clock().seconds() + step.place().changeoverSeconds()))
                .toList();
    }

    /** Tools that today's steps need and that are known not to be there. */
    public List<Tool> missing() {
        return tools.stream().filter(Tool::missing).toList();
    }
}
