package gudgeon.app.cli;

import gudgeon.app.desk.ComingBack;
import gudgeon.app.desk.FinishForecast;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Preparing;
import gudgeon.app.desk.Today;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.EntryWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.SessionWords;
import gudgeon.app.document.StepWords;
import gudgeon.app.document.ToldCautions;
import gudgeon.app.format.Cautions;
import gudgeon.core.session.SessionPlan;
import java.util.List;
import java.util.Optional;

/** Sessions for a person: today's card, coming back, what to have ready. */
final class SessionText {
    private final Screen screen;
    private final Layout layout;
    private final Job job;
    private final Names names;
    private final SessionWords words;

    SessionText(Screen screen, Job job) {
        this.screen = screen;
        this.layout = new Layout(screen);
        this.job = job;
        this.names = new Names(job.engine());
        this.words = new SessionWords(job.engine());
    }

    void today(Today today, FinishForecast forecast) {
        SessionPlan.Stop stop = today.plan().stop();
        layout.heading("Today: " + today.plan().steps() + " of "
                + (today.works().size() + today.left().size()) + " steps");
        today.request().now().unsafe().forEach(one -> layout.paragraph(2, words.unsafe(one), Ink.DANGER));
        if (today.plan().steps() > 0) {
            layout.line("  Stop work by " + SessionWords.clock(today.stopsWork()) + ", closed up by "
                    + SessionWords.clock(today.ends()) + " (" + SessionWords.minutes(stop.closeMinutes())
                    + " to close up)");
            layout.line("  Work: one by one " + forecast(stop.independent()) + "; all together "
                    + forecast(stop.together()));
        } else {
            layout.line("  No step is done and safe within that time.");
        }
        String ended = words.ended(today.plan());
        if (!ended.isEmpty()) {
            layout.paragraph(2, ended, Ink.SOFT);
        }
        today.light().flatMap(light -> light.day().sets()).ifPresent(sets -> layout.line("  Sunset "
                + SessionWords.clock(sets) + (today.endsWithTheLight() ? ": it ends the session" : "")));
        layout.paragraph(2, "Alone? Tell somebody that you will be in by " + SessionWords.clock(today.ends()) + ".");
        left(today);
        tools(today);
        steps(today);
        close(stop);
        whole(forecast);
    }

    private static String forecast(SessionPlan.Forecast forecast) {
        return SessionWords.minutes(forecast.p10()) + " / " + SessionWords.minutes(forecast.p50()) + " / "
                + SessionWords.minutes(forecast.p90()) + ", " + SessionWords.chance(forecast.within()) + " in time";
    }

    private void left(Today today) {
        List<Today.LeftOut> told = today.left().stream()
                .filter(out -> out.why() != Today.LeftOut.Why.WAITS)
                .toList();
        if (today.left().isEmpty()) {
            return;
        }
        layout.heading("Not today");
        told.forEach(out -> layout.line("  " + Names.capital(names.any(out.id())) + ": " + why(out)));
        int waiting = today.left().size() - told.size();
        if (waiting > 0) {
            layout.line("  " + Figures.count(waiting, "step") + " more wait for what is left out");
        }
    }

    private String why(Today.LeftOut out) {
        String about = Figures.list(out.about().stream().map(names::any).toList(), 3);
        return switch (out.why()) {
            case TOOL, LIFTING -> about + " is not here";
            case TROUBLE -> "trouble, not solved";
            case LACKS -> "lacks " + about;
            case WAITS -> "waits";
        };
    }

    private void tools(Today today) {
        if (!today.tools().isEmpty()) {
            layout.heading("Lay out first");
            layout.paragraph(2, String.join(", ", today.tools().keySet()));
        }
    }

    private void steps(Today today) {
        ToldCautions told = new ToldCautions(Cautions.catalogue(), job.engine());
        int number = 0;
        String zone = "";
        for (Today.Work work : today.today()) {
            number++;
            if (!work.zone().equals(zone)) {
                zone = work.zone();
                layout.heading(names.zone(zone));
            }
            List<String> cautions = switch (work) {
                case Today.Work.Undo one -> one.operation().cautions();
                case Today.Work.Fit one -> one.operation().needs().cautions();
                case Today.Work.Soak one -> List.of();
            };
            List<String> parts = work instanceof Today.Work.Undo one ? one.operation().pieces() : List.of();
            new CautionLines(screen).print(5, told.at(number, cautions, parts));
            double minutes = today.request().paces().time(work.nominal()).median()
                    + work.nominal().waitMinutes();
            layout.withFigure(
                    String.format("%3d  ", number), 5, instruction(work), SessionWords.minutes(Math.max(minutes, 1)));
        }
    }

    private String instruction(Today.Work work) {
        return switch (work) {
            case Today.Work.Undo one -> new StepWords(job.engine()).instruction(one.operation());
            case Today.Work.Fit one -> new BuildWords(job.engine()).instruction(one.operation());
            case Today.Work.Soak one ->
                words.soak(one.joint()) + ", and leave it " + Figures.plain(one.hours()) + " hours";
        };
    }

    private void close(SessionPlan.Stop stop) {
        if (stop.steps() == 0) {
            return;
        }
        layout.heading("Stop here, and close up");
        if (!stop.stand().openings().isEmpty()) {
            layout.paragraph(2, "Cover: " + String.join(", ", words.names(stop.stand().openings())));
        }
        if (!stop.stand().bare().isEmpty()) {
            layout.paragraph(2, "Oil: " + String.join(", ", words.names(stop.stand().bare())));
        }
        layout.line("  Tools counted and away, bags shut, tags on the key, the book written.");
    }

    private void whole(FinishForecast forecast) {
        if (forecast.whole().independent().mean() == 0) {
            return;
        }
        layout.heading("Until it is together again");
        layout.line("  10 / 50 / 90 %: one by one "
                + SessionWords.minutes(forecast.whole().independent().p10()) + " / "
                + SessionWords.minutes(forecast.whole().independent().p50()) + " / "
                + SessionWords.minutes(forecast.whole().independent().p90()));
        layout.line("                  all together "
                + SessionWords.minutes(forecast.whole().together().p10()) + " / "
                + SessionWords.minutes(forecast.whole().together().p50()) + " / "
                + SessionWords.minutes(forecast.whole().together().p90()));
        layout.line("  Pace: " + Figures.plain(Math.round(forecast.pace().median() * 100) / 100.0)
                + " times the file's minutes, from " + Figures.count(forecast.pace().timed(), "timed step"));
        forecast.dates().ifPresent(dates -> layout.line("  At the rate so far: " + SessionWords.day(dates.middle())
                + ", between " + SessionWords.day(dates.early()) + " and " + SessionWords.day(dates.late())));
    }

    void back(ComingBack back) {
        EntryWords entries = new EntryWords(job.engine());
        layout.heading("Coming back to " + job.name());
        layout.line(back.left()
                .worked()
                .map(worked -> "  The last step was written on " + SessionWords.day(worked) + ", "
                        + SessionWords.days(back.left().days()))
                .orElse("  No step was written yet"));
        back.openings().unsafe().forEach(one -> layout.paragraph(2, words.unsafe(one), Ink.DANGER));
        if (!back.left().midStep().isEmpty()) {
            layout.paragraph(2, "Begun and not done: " + names.any(back.left().midStep()), Ink.STRONG);
        }
        if (!back.left().safe()) {
            layout.paragraph(2, "Left not safe. " + back.left().note(), Ink.STRONG);
        }
        layout.heading("Begin with");
        layout.paragraph(2, begin(back.begin()), Ink.STRONG);
        if (!back.lookAgain().isEmpty()) {
            layout.heading("Look at these again; nothing is tightened twice");
            back.lookAgain().forEach(entry -> layout.hanging("  - ", 4, entries.of(entry)));
        }
        back.sealants()
                .forEach(sealed -> layout.line("  sealant: " + names.any(sealed.joint()) + ", "
                        + sealed.state().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')));
        if (!back.bare().isEmpty()) {
            layout.heading("Bare metal");
            back.bare()
                    .forEach(bare -> layout.line("  " + Names.capital(names.any(bare.surface())) + ": "
                            + (bare.oiled() ? "oiled " + SessionWords.days(bare.days()) : "never oiled, by the book")));
        }
        if (!back.openings().joints().isEmpty()) {
            layout.heading("Open, not covered");
            layout.paragraph(2, String.join(", ", words.names(back.openings().joints())));
        }
        back.contradictions()
                .forEach(one -> layout.line("  does not fit together: " + names.any(one.about())));
        if (!back.since().isEmpty()) {
            layout.heading("Since the last step");
            back.since()
                    .forEach(entry -> layout.hanging(
                            "  + ", 4, SessionWords.day(entry.stamp().at()) + ": " + entries.of(entry)));
        }
    }

    private String begin(ComingBack.Begin begin) {
        return switch (begin) {
            case ComingBack.Begin.CleanOff(String joint) -> "Clean the old sealant off both faces: " + names.any(joint);
            case ComingBack.Begin.Oil(List<String> surfaces) ->
                "Wipe and oil what is bare: " + Figures.list(surfaces.stream().map(names::any).toList(), 3);
            case ComingBack.Begin.Cover(List<String> joints) ->
                "Cover what stands open: " + Figures.list(joints.stream().map(names::any).toList(), 3);
            case ComingBack.Begin.Steps(Today today) -> instruction(today.today().getFirst());
            case ComingBack.Begin.LayOut(Optional<Today.Work> next) ->
                next.map(work -> "Lay out for the next step: " + instruction(work))
                        .orElse("Go through the bags and count them");
        };
    }

    void prepare(Preparing ready) {
        layout.heading("Prepare for the next " + Figures.count(ready.steps(), "step"));
        if (ready.wash()) {
            layout.line("  Wash the engine and let it dry.");
        }
        list("Write down or save", any(ready.records()));
        list("Buy", ready.buy().stream()
                .map(piece -> (piece.count() > 0 ? piece.count() + " × " : "") + piece.spec())
                .toList());
        list("On its way", ready.waiting());
        list("Have, borrow or hire", ready.special());
        list("Lay out", ready.usual());
        list("Who helps", ready.helpers().stream()
                .map(lift -> lift.way() + ": " + Figures.list(names.parts(lift.parts()), 2) + ", "
                        + Figures.mass(lift.kilograms()))
                .toList());
        list("Cans and pans", ready.catching().stream()
                .map(one -> names.any(one.circuit())
                        + one.litres().map(litres -> ", up to " + Figures.volume(litres)).orElse(""))
                .toList());
        list("Soak days before", any(ready.soak()));
        list("On a warm engine, so first", any(ready.warm()));
        if (ready.bags() > 0) {
            layout.line("  " + Figures.count(ready.bags(), "bag") + " with labels");
        }
    }

    private List<String> any(List<String> ids) {
        return ids.stream().map(names::any).toList();
    }

    private void list(String name, List<String> things) {
        if (!things.isEmpty()) {
            layout.hanging("  " + name + ": ", 4, String.join("; ", things));
        }
    }
}
