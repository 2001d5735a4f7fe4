package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.book.Keeping;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The tools of a person: the last word on each in all books of the store that name the same toolbox (decision 0025).
 *
 * @param tools by their name in small letters
 */
public record Toolbox(Map<String, Facts.Tool> tools) {
    public Toolbox {
        tools = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(tools));
    }

    /** The toolbox that is used for a job. */
    public static Toolbox of(Workshop workshop, Job job) {
        String whose = job.facts().setting().means().toolbox();
        Map<String, Facts.Tool> tools = new LinkedHashMap<>();
        add(job, tools);
        for (String id : workshop.jobIds()) {
            workshop.findJob(id)
                    .filter(other -> !other.id().equals(job.id()))
                    .filter(other -> other.facts().setting().means().toolbox().equals(whose))
                    .ifPresent(other -> add(other, tools));
        }
        return new Toolbox(tools);
    }

    private static void add(Job job, Map<String, Facts.Tool> tools) {
        job.facts().kept().tools().values().forEach(tool -> tools.merge(
                key(tool.said().tool()), tool, (a, b) -> b.at().isAfter(a.at()) ? b : a));
    }

    private static String key(String tool) {
        return tool.strip().toLowerCase(Locale.ROOT);
    }

    /** The last word on a tool; empty when nobody said anything of it. */
    public Optional<Keeping.ToolMarked> find(String tool) {
        return Optional.ofNullable(tools.get(key(tool))).map(Facts.Tool::said);
    }

    /** Whether a tool is known not to be there. */
    public boolean isMissing(String tool) {
        return find(tool).filter(said -> said.whose() == Keeping.Whose.MISSING).isPresent();
    }
}
