package gudgeon.app.desk;

import gudgeon.core.forecast.Bands;
import gudgeon.core.forecast.Pace;
import gudgeon.core.forecast.Paces;
import gudgeon.core.forecast.WorkTime;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.StripPlan;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How much work is left, and when it is done at the rate so far.
 *
 * @param pace the pace over all work
 * @param strip minutes of work left to undo
 * @param whole minutes of work left until everything is together again; cures and cooling not counted
 * @param soFar minutes in the book
 * @param nominalSoFar what the file gives for the same work
 * @param rate minutes of work a day so far; 0 when nothing was timed
 * @param dates when everything is together at that rate; empty when nothing was timed
 */
public record FinishForecast(
        Pace pace, Both strip, Both whole, double soFar, double nominalSoFar, double rate, Optional<Dates> dates) {
    /** Shorter than a week shows no rate. */
    private static final double FEWEST_DAYS = 7;

    /** Delays that have nothing to do with each other, and delays that go together. */
    public record Both(Bands independent, Bands together) {
        static Both of(List<WorkTime> times) {
            return new Both(Bands.independent(times), Bands.together(times));
        }
    }

    /** Between these two with a chance of 80 %, half of the time before the middle one; delays going together. */
    public record Dates(OffsetDateTime early, OffsetDateTime middle, OffsetDateTime late) {}

    /** @param now from when on */
    public static FinishForecast of(Job job, OffsetDateTime now) {
        Paces paces = OwnPace.of(job);
        List<WorkTime> strip = new ArrayList<>();
        List<BuildRequest.Step> more = new ArrayList<>();
        job.findPlan()
                .ifPresent(plan -> plan.operations().forEach(operation -> {
                    strip.add(paces.time(
                            TodayStrip.nominal(job, operation, operation.place().changeoverSeconds(), 0)));
                    more.add(new BuildRequest.Step(
                            operation.kind(),
                            operation.id(),
                            operation.kind() == StripPlan.Kind.LIFT ? operation.pieces() : List.of()));
                }));
        List<WorkTime> back = back(job, paces, more);
        Both whole = Both.of(Stream.concat(strip.stream(), back.stream()).toList());
        double soFar = job.facts().clocked().totalMinutes();
        double rate = rate(job, soFar, now);
        return new FinishForecast(
                paces.all(),
                Both.of(strip),
                whole,
                soFar,
                nominalSoFar(job),
                rate,
                rate > 0 ? Optional.of(dates(whole.together(), rate, now)) : Optional.empty());
    }

    private static List<WorkTime> back(Job job, Paces paces, List<BuildRequest.Step> more) {
        BuildBench bench = new BuildBench(job);
        List<BuildRequest.Step> steps =
                Stream.concat(bench.request().steps().stream(), more.stream()).toList();
        if (steps.isEmpty()) {
            return List.of();
        }
        BuildPlan plan = more.isEmpty()
                ? bench.plan()
                : job.plans().build(job.engine(), bench.request().withSteps(steps));
        return plan.operations().stream()
                .filter(operation -> operation.kind() != BuildPlan.Kind.WAIT)
                .filter(operation -> more.isEmpty() ? !bench.isDone(operation) : true)
                .map(operation -> paces.time(gudgeon.core.forecast.Nominal.work(
                        BuildPlan.class.getSimpleName(),
                        (operation.clock().seconds() + operation.place().changeoverSeconds()) / 60.0)))
                .toList();
    }

    /** Minutes of work a day since the job began. */
    private static double rate(Job job, double minutes, OffsetDateTime now) {
        return job.facts()
                .clocked()
                .opened()
                .map(opened -> minutes
                        / Math.max(FEWEST_DAYS, Duration.between(opened, now).toHours() / 24.0))
                .orElse(0.0);
    }

    private static double nominalSoFar(Job job) {
        return job.facts().clocked().minutes().keySet().stream()
                        .mapToDouble(id -> job.engine()
                                .findJoint(id)
                                .map(joint -> joint.work().undo().fastenerSeconds())
                                .or(() -> job.engine().findReady(id).map(ready -> ready.seconds()))
                                .orElse(0L))
                        .sum()
                / 60;
    }

    private static Dates dates(Bands left, double rate, OffsetDateTime now) {
        return new Dates(day(now, left.p10() / rate), day(now, left.p50() / rate), day(now, left.p90() / rate));
    }

    private static OffsetDateTime day(OffsetDateTime now, double days) {
        return now.plusDays((long) Math.ceil(Math.min(days, 36_500)));
    }
}
