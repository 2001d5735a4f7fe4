package gudgeon.app.cli;

import gudgeon.app.desk.ComingBack;
import gudgeon.app.desk.FinishForecast;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Today;
import gudgeon.core.forecast.Bands;
import gudgeon.core.forecast.Pace;
import gudgeon.core.session.SessionPlan;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Sessions as maps, ready to be written as JSON. Minutes to a hundredth; keys are in docs/json.md. */
final class SessionJson {
    private SessionJson() {}

    static Map<String, @Nullable Object> today(Today today, FinishForecast forecast) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("job", today.job().id());
        map.put("request", request(today));
        map.put("pace", pace(today.request().paces().all()));
        map.put("steps", today.plan().steps());
        map.put("ended", today.plan().ended());
        map.put("about", today.plan().about());
        map.put("stop_work_at", today.stopsWork().toString());
        map.put("ends_at", today.ends().toString());
        map.put("sunrise", sun(today.light().flatMap(light -> light.day().rises())));
        map.put("sunset", sun(today.light().flatMap(light -> light.day().sets())));
        map.put("tools", today.tools());
        map.put("operations", today.works().stream().map(SessionJson::work).toList());
        map.put("stops", today.plan().stops().stream().map(SessionJson::stop).toList());
        map.put("left_out", today.left());
        map.put("forecast", forecast(forecast));
        return map;
    }

    private static @Nullable String sun(Optional<OffsetDateTime> time) {
        return time.map(OffsetDateTime::toString).orElse(null);
    }

    private static Map<String, @Nullable Object> request(Today today) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("at", today.now().toString());
        map.put("minutes", today.question().minutes());
        map.put("minutes_used", today.request().minutes());
        map.put("chance", today.request().chance());
        Map<String, @Nullable Object> close = new LinkedHashMap<>();
        close.put(
                "kept",
                today.question().keep().isPresent() ? today.question().keep().getAsDouble() : null);
        close.put("base", today.request().closeUp().base());
        close.put("per_opening", today.request().closeUp().perOpening());
        close.put("per_surface", today.request().closeUp().perSurface());
        map.put("close_up", close);
        map.put("without", today.question().without());
        map.put("first", today.question().first());
        map.put("at_hand", today.question().windows());
        map.put("past_dark", today.question().pastDark());
        return map;
    }

    private static Map<String, @Nullable Object> pace(Pace pace) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("median", rounded(pace.median()));
        map.put("sigma", rounded(pace.sigma()));
        map.put("timed", pace.timed());
        return map;
    }

    private static Map<String, @Nullable Object> work(Today.Work work) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("id", work.id());
        map.put(
                "kind",
                switch (work) {
                    case Today.Work.Undo one -> one.operation().kind();
                    case Today.Work.Fit one -> one.operation().kind();
                    case Today.Work.Soak one -> "soak";
                });
        map.put("zone", work.zone());
        map.put("tools", work.tools());
        map.put("nominal_minutes", rounded(work.nominal().minutes()));
        map.put("wait_minutes", rounded(work.nominal().waitMinutes()));
        map.put("seizure_chance", work.nominal().seizureChance());
        map.put("seizure_minutes", rounded(work.nominal().seizureMinutes()));
        map.put(
                "cautions",
                switch (work) {
                    case Today.Work.Undo one -> one.operation().cautions();
                    case Today.Work.Fit one -> one.operation().needs().cautions();
                    case Today.Work.Soak one -> List.of();
                });
        return map;
    }

    private static Map<String, @Nullable Object> stop(SessionPlan.Stop stop) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("steps", stop.steps());
        map.put("may_stop", stop.mayStop());
        map.put("unsafe", stop.stand().unsafe());
        map.put("risky_last", stop.riskyLast());
        map.put("openings", stop.stand().openings());
        map.put("bare", stop.stand().bare());
        map.put("close_minutes", rounded(stop.closeMinutes()));
        map.put("independent", forecast(stop.independent()));
        map.put("together", forecast(stop.together()));
        return map;
    }

    private static Map<String, @Nullable Object> forecast(SessionPlan.Forecast forecast) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("p10", rounded(forecast.p10()));
        map.put("p50", rounded(forecast.p50()));
        map.put("p80", rounded(forecast.p80()));
        map.put("p90", rounded(forecast.p90()));
        map.put("within", Math.round(forecast.within() * 10_000) / 10_000.0);
        return map;
    }

    static Map<String, @Nullable Object> forecast(FinishForecast forecast) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("strip", both(forecast.strip()));
        map.put("whole", both(forecast.whole()));
        map.put("minutes_so_far", rounded(forecast.soFar()));
        map.put("nominal_minutes_so_far", rounded(forecast.nominalSoFar()));
        map.put("minutes_a_day", rounded(forecast.rate()));
        map.put(
                "done_on",
                forecast.dates()
                        .map(dates -> List.of(
                                dates.early().toLocalDate().toString(),
                                dates.middle().toLocalDate().toString(),
                                dates.late().toLocalDate().toString()))
                        .orElse(null));
        return map;
    }

    private static Map<String, @Nullable Object> both(FinishForecast.Both both) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("independent", bands(both.independent()));
        map.put("together", bands(both.together()));
        return map;
    }

    private static Map<String, @Nullable Object> bands(Bands bands) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("p10", rounded(bands.p10()));
        map.put("p50", rounded(bands.p50()));
        map.put("p80", rounded(bands.p80()));
        map.put("p90", rounded(bands.p90()));
        map.put("mean", rounded(bands.mean()));
        return map;
    }

    /** To a hundredth; null when it lies beyond what was looked at. */
    private static @Nullable Double rounded(double minutes) {
        return Double.isFinite(minutes) ? Math.round(minutes * 100) / 100.0 : null;
    }

    static Map<String, @Nullable Object> back(Job job, ComingBack back, OffsetDateTime now) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("job", job.id());
        map.put("at", now.toString());
        map.put("last_step", back.left().worked().map(OffsetDateTime::toString).orElse(null));
        map.put("days", back.left().days());
        map.put("mid_step", back.left().midStep().isEmpty() ? null : back.left().midStep());
        map.put("session_open", back.left().sessionOpen());
        map.put("left_safe", back.left().safe());
        map.put("left_note", back.left().note());
        map.put("unsafe", back.openings().unsafe());
        map.put("open", back.openings().joints());
        map.put("covered", back.openings().covered());
        map.put("sealants", back.sealants().stream().map(SessionJson::sealed).toList());
        map.put("bare", back.bare());
        map.put("since", back.since().stream().map(JobJson::entry).toList());
        map.put("look_again", back.lookAgain().stream().map(JobJson::entry).toList());
        map.put("contradictions", back.contradictions());
        map.put("begin", begin(back.begin()));
        map.put("forecast", forecast(FinishForecast.of(job, now)));
        return map;
    }

    private static Map<String, @Nullable Object> sealed(ComingBack.Sealed sealed) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("joint", sealed.joint());
        map.put("spec", sealed.spec());
        map.put("on", sealed.on().toString());
        map.put("until", sealed.until().toString());
        map.put("state", sealed.state());
        return map;
    }

    private static Map<String, @Nullable Object> begin(ComingBack.Begin begin) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        switch (begin) {
            case ComingBack.Begin.CleanOff(String joint) -> put(map, "clean off", List.of(joint));
            case ComingBack.Begin.Oil(List<String> surfaces) -> put(map, "oil", surfaces);
            case ComingBack.Begin.Cover(List<String> joints) -> put(map, "cover", joints);
            case ComingBack.Begin.Steps(Today today) ->
                put(map, "steps", today.today().stream().map(Today.Work::id).toList());
            case ComingBack.Begin.LayOut(Optional<Today.Work> next) ->
                put(map, "lay out", next.stream().map(Today.Work::id).toList());
        }
        return map;
    }

    private static void put(Map<String, @Nullable Object> map, String kind, List<String> about) {
        map.put("kind", kind);
        map.put("about", about);
    }
}
