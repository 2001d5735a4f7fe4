package gudgeon.app.cli;

import gudgeon.app.desk.FinishForecast;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.AtHand;
import gudgeon.app.desk.TodayQuestion;
import gudgeon.app.desk.Workshop;
import gudgeon.app.format.PlainJson;
import gudgeon.core.session.Window;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** I have so many minutes: today's card. */
@Command(
        name = "today",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "I have so many minutes: the steps up to a safe stop, what to lay out, what to begin first.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or a name means nothing in it",
            "2:Wrong usage",
            "3:There is nothing to plan; the answer says why",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon today 90 --keep 17 --at-hand helper=14:30-16:00 --without \"torque wrench\""})
final class TodayCommand implements Callable<Integer> {
    private static final Pattern AT_HAND =
            Pattern.compile("(.+)=([01][0-9]|2[0-3]):([0-5][0-9])-([01][0-9]|2[0-3]):([0-5][0-9])");

    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "MINUTES", description = "The time there is, 5 to 1440.")
    private int minutes = 0;

    @Option(
            names = "--keep",
            paramLabel = "MINUTES",
            defaultValue = "-1",
            description = "Kept to close up. Default: worked out from what stands open.")
    private double keep = -1;

    @Option(
            names = "--sure",
            paramLabel = "PERCENT",
            defaultValue = "80",
            description = "How sure the safe stop must be. Default: 80.")
    private double sure = 80;

    @Option(
            names = "--without",
            paramLabel = "TOOL",
            description = "Not there today: a tool, helper or hoist; again for more.")
    private List<String> without = new ArrayList<>();

    @Option(
            names = "--first",
            paramLabel = "PART",
            description = "Reach this first, because somebody else waits for it; again for more.")
    private List<String> first = new ArrayList<>();

    @Option(
            names = "--at-hand",
            paramLabel = "WHAT=HH:MM-HH:MM",
            description = "A helper or a hired tool is there only then; again for more.")
    private List<String> atHand = new ArrayList<>();

    @Option(names = "--past-dark", description = "Go on after sunset although it is outdoors.")
    private boolean pastDark = false;

    TodayCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (minutes < TodayQuestion.SHORTEST || minutes > TodayQuestion.LONGEST) {
            throw options.wrong("a session has " + TodayQuestion.SHORTEST + " to " + TodayQuestion.LONGEST
                    + " minutes, not " + minutes);
        }
        if (!(sure > 0 && sure < 100)) {
            throw options.wrong("--sure is more than 0 and less than 100, not " + sure + ". Maybe 80?");
        }
        return new JobRun(screen, options).onJob(this::card);
    }

    private int card(Workshop workshop, Job job) {
        OffsetDateTime now = workshop.now();
        TodayQuestion question = new TodayQuestion(
                minutes,
                sure / 100,
                keep < 0 ? OptionalDouble.empty() : OptionalDouble.of(keep),
                without,
                first,
                atHand.stream().map(one -> window(one, now)).toList(),
                pastDark);
        return switch (question.ask(job, now)) {
            case TodayQuestion.Reply.Unknown unknown -> {
                unknown.names()
                        .forEach(name -> screen.err()
                                .println("gudgeon: no part is called '" + name.word() + "'."
                                        + (name.near().isEmpty()
                                                ? ""
                                                : " Maybe " + String.join(", or ", name.told()) + "?")));
                yield Exit.INPUT;
            }
            case TodayQuestion.Reply.Nothing nothing -> {
                screen.err().println("gudgeon: nothing to plan: " + JobText.stage(nothing.stage()));
                yield Exit.BLOCKED;
            }
            case TodayQuestion.Reply.Planned planned -> {
                FinishForecast forecast = FinishForecast.of(job, now);
                if (options.json()) {
                    screen.out().print(PlainJson.text(SessionJson.today(planned.today(), forecast)));
                } else {
                    new SessionText(screen, job).today(planned.today(), forecast);
                }
                yield Exit.DONE;
            }
        };
    }

    private Window window(String text, OffsetDateTime now) {
        Matcher read = AT_HAND.matcher(text);
        if (!read.matches()) {
            throw options.wrong("'" + text + "' says not when it is there. Maybe helper=14:30-16:00?");
        }
        return AtHand.window(
                        read.group(1),
                        now.toLocalTime(),
                        Optional.of(time(read.group(2), read.group(3))),
                        Optional.of(time(read.group(4), read.group(5))))
                .orElseThrow(() -> options.wrong("'" + text + "' goes before it comes"));
    }

    private static LocalTime time(String hour, String minute) {
        return LocalTime.of(Integer.parseInt(hour), Integer.parseInt(minute));
    }
}
