package gudgeon.app.cli;

import gudgeon.app.desk.FindQuestion;
import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.app.format.FindingCase;
import gudgeon.core.finding.Depth;
import gudgeon.core.finding.Diagnosis;
import gudgeon.core.finding.NextTests;
import gudgeon.core.finding.Place;
import gudgeon.core.finding.Posterior;
import gudgeon.core.finding.Where;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is believed to be wrong, and what to do next, on a screen. */
final class FindText {
    private static final double SHOWN = 0.01;
    private static final int MOST_SHOWN = 10;
    private static final int MOST_STEPS = 4;
    private static final double SUSPECT = 0.15;

    private final Screen screen;

    FindText(Screen screen) {
        this.screen = screen;
    }

    void print(FindQuestion.Answer.Found found) {
        Diagnosis diagnosis = found.diagnosis();
        line("What is likely wrong (several can be at once):");
        for (Posterior.Belief belief : diagnosis.leading(MOST_SHOWN, SHOWN)) {
            line(String.format(
                    Locale.ROOT,
                    "  %5.1f %%  %s, %s (%s)",
                    belief.chance() * 100,
                    belief.fault().words().name(),
                    where(belief.where()),
                    depth(belief.fault().repair().mended())));
        }
        depths(diagnosis.posterior());
        List<Diagnosis.Weighed> weighed = diagnosis.weighed();
        List<NextTests.Step> repeats = found.next().repeats(weighed, SUSPECT);
        if (!repeats.isEmpty()) {
            line("");
            line("Readings that do not fit; do them again before anything is opened:");
            repeats.forEach(this::step);
        }
        steps(found.next());
        asks(found.asked());
    }

    private void depths(Posterior posterior) {
        line(String.format(
                Locale.ROOT,
                "How deep: covers off %.0f %%, head off %.0f %%, bottom end %.0f %%.",
                posterior.atLeast(Depth.COVERS) * 100,
                posterior.atLeast(Depth.HEAD_OFF) * 100,
                posterior.atLeast(Depth.BOTTOM_END) * 100));
    }

    private void steps(NextTests next) {
        List<NextTests.Step> ranked = next.ranked();
        boolean pays = ranked.stream().anyMatch(step -> step.saves() > step.minutes());
        NextTests.Plan plan = next.plan();
        line("");
        if (!pays && plan.to() != Depth.NONE) {
            line("No test is worth its time any more. Open it: " + depth(plan.to()) + ".");
        }
        line("Next, the most told for each minute first:");
        ranked.stream().limit(MOST_STEPS).forEach(this::step);
        if (!plan.order().isEmpty()) {
            line("Without another test, try in this order:");
            plan.order().forEach(belief -> line("  " + belief.fault().words().name() + ", " + where(belief.where()) + ": "
                    + belief.fault().words().mend()));
        }
    }

    private void step(NextTests.Step step) {
        List<Caution> cautions = Cautions.catalogue().ranked(step.test().cautions());
        for (Caution caution : cautions) {
            line("    ! " + caution.title() + ": " + caution.text());
        }
        line("  " + step.test().name() + cylinders(step.cylinders())
                + String.format(Locale.ROOT, ", %.0f min", step.minutes())
                + (step.missing().isEmpty() ? "" : ", not owned: " + String.join(", ", step.missing())));
        for (NextTests.Outcome outcome : step.answers().stream().limit(2).toList()) {
            line(String.format(
                    Locale.ROOT,
                    "      %s (%.0f %%): then %s, %s, %.0f %%",
                    outcome.words(),
                    outcome.chance() * 100,
                    outcome.leads().fault().words().name(),
                    where(outcome.leads().where()),
                    outcome.then() * 100));
        }
    }

    private void asks(FindingCase asked) {
        for (FindingCase.Ask ask : asked.asks()) {
            line("Please tell: " + ask.what() + (ask.cylinder() == 0 ? "" : " of cylinder " + ask.cylinder())
                    + ". Until then: " + ask.assumed());
        }
    }

    private void line(String text) {
        screen.out().println(text);
    }

    private static String cylinders(List<Integer> cylinders) {
        return cylinders.isEmpty()
                ? ""
                : ", cylinder " + cylinders.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String where(Where where) {
        return switch (where.at()) {
            case CYLINDER -> "cylinder " + where.label();
            case NEIGHBOURS -> "cylinders " + where.label();
            case BANK, ENGINE -> where.at() == Place.ENGINE ? "whole engine" : where.label();
        };
    }

    private static String depth(Depth depth) {
        return switch (depth) {
            case NONE -> "nothing opened";
            case COVERS -> "covers off";
            case HEAD_OFF -> "head off";
            case BOTTOM_END -> "bottom end";
        };
    }
}
