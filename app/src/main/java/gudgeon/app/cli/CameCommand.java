package gudgeon.app.cli;

import gudgeon.app.desk.CameIn;
import gudgeon.app.desk.OldBesideNew;
import gudgeon.app.document.CompareWords;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Something that was ordered arrived, and lies beside the old one. */
@Command(
        name = "came",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Something that was ordered arrived, and lies beside the old one.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon came \"head bolt M10x1.25\" --count 4 --length 90 --size M10x1.25"})
final class CameCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "SPEC", description = "What, as gudgeon job order calls it.")
    private String spec = "";

    @Option(names = "--count", paramLabel = "N", defaultValue = "1", description = "How many.")
    private int count = 1;

    @Option(names = "--length", paramLabel = "MM", defaultValue = "", description = "How long the new one is.")
    private String length = "";

    @Option(names = "--size", paramLabel = "SIZE", defaultValue = "", description = "Its thread, or its sizes.")
    private String size = "";

    @Option(names = "--holes", paramLabel = "N", defaultValue = "", description = "Holes for fasteners in it.")
    private String holes = "";

    @Option(names = "--in-box", paramLabel = "N", defaultValue = "", description = "Pieces counted, as against the old ones.")
    private String counted = "";

    @Option(names = "--compared", description = "Laid beside the old one, and the same in every size.")
    private boolean compared;

    @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "A word on it.")
    private String note = "";

    CameCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Map<OldBesideNew.Sort, String> facts = new LinkedHashMap<>();
        facts.put(OldBesideNew.Sort.COUNT, counted);
        facts.put(OldBesideNew.Sort.LENGTH, length);
        facts.put(OldBesideNew.Sort.SIZE, size);
        facts.put(OldBesideNew.Sort.HOLES, holes);
        return new JobRun(screen, options).onJob((workshop, job) -> {
            JobRun run = new JobRun(screen, options);
            int exit = run.told(
                    workshop.note(job, new CameIn(spec, count, compared, facts, note), run.who(), Optional.empty()));
            String differs = workshop.findJob(job.id())
                    .map(now -> CompareWords.differences(OldBesideNew.differences(now, spec)))
                    .orElse("");
            if (exit == Exit.DONE && !differs.isEmpty() && !options.json()) {
                new Layout(screen).paragraph(2, "Not like the old one: " + differs, Ink.STRONG);
            }
            return exit;
        });
    }
}
