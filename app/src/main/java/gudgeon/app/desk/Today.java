package gudgeon.app.desk;

import gudgeon.core.forecast.Nominal;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.session.SessionPlan;
import gudgeon.core.session.SessionRequest;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A card for one session.
 *
 * @param job the job
 * @param question what was asked
 * @param now when it begins
 * @param light the daylight; empty when no place was told
 * @param request what the session planner was asked
 * @param plan how far it goes
 * @param works all steps that were looked at, in order; {@code plan.steps()} of them are for today
 * @param left steps that cannot be done today, and why
 */
public record Today(
        Job job,
        TodayQuestion question,
        OffsetDateTime now,
        Optional<Light> light,
        SessionRequest request,
        SessionPlan plan,
        List<Work> works,
        List<LeftOut> left) {
    public Today {
        works = List.copyOf(works);
        left = List.copyOf(left);
    }

    /** The light of the day, and whether the work needs it. */
    public record Light(Daylight day, boolean outdoors) {}

    /** One step. */
    public sealed interface Work {
        /** Id of the operation. */
        String id();

        /** What the file says it takes. */
        Nominal nominal();

        /** Tools to take in the hand. */
        List<String> tools();

        /** Zone where it is done. */
        String zone();

        /** A step of a plan, with the tools and the zone of its place. */
        sealed interface Planned extends Work {
            /** Where and with what. */
            StripPlan.Place place();

            @Override
            default List<String> tools() {
                return place().tools();
            }

            @Override
            default String zone() {
                return place().zone();
            }
        }

        /** A step of the strip. */
        record Undo(StripPlan.Operation operation, Nominal nominal) implements Planned {
            @Override
            public String id() {
                return operation.id();
            }

            @Override
            public StripPlan.Place place() {
                return operation.place();
            }
        }

        /** A step of the way back. */
        record Fit(BuildPlan.Operation operation, Nominal nominal) implements Planned {
            @Override
            public String id() {
                return operation.id();
            }

            @Override
            public StripPlan.Place place() {
                return operation.place();
            }
        }

        /**
         * Penetrating oil on a joint of a later day, so that it soaks meanwhile.
         *
         * @param hours how long it should soak
         */
        record Soak(String joint, String zone, double chance, double hours, Nominal nominal) implements Work {
            @Override
            public String id() {
                return "soak/" + joint;
            }

            @Override
            public List<String> tools() {
                return List.of();
            }
        }
    }

    /**
     * A step that is not for today.
     *
     * @param why why
     * @param about the tool, the way of lifting, what is lacking, or the step that it waits for
     */
    public record LeftOut(String id, Why why, List<String> about) {
        public LeftOut {
            about = List.copyOf(about);
        }

        /** Reasons. */
        public enum Why {
            /** Its tool is not there. */
            TOOL,
            /** What carries it is not there. */
            LIFTING,
            /** Its joint gives trouble that is not solved. */
            TROUBLE,
            /** It lacks a piece, a limit, a figure. */
            LACKS,
            /** It waits for a step that is left out. */
            WAITS
        }
    }

    /** Steps for today. */
    public List<Work> today() {
        return works.subList(0, plan.steps());
    }

    /** Tools to lay out, and how many of today's steps want each, in the order in which they are first wanted. */
    public Map<String, Integer> tools() {
        Map<String, Integer> tools = new LinkedHashMap<>();
        today().forEach(work -> work.tools().forEach(tool -> tools.merge(tool, 1, Integer::sum)));
        return tools;
    }

    /** Zones of today, in the order in which one comes there, neighbours merged. */
    public List<String> zones() {
        List<String> zones = new ArrayList<>();
        today().forEach(work -> {
            if (zones.isEmpty() || !zones.getLast().equals(work.zone())) {
                zones.add(work.zone());
            }
        });
        return zones;
    }

    /** When the session ends: closed up by then. */
    public OffsetDateTime ends() {
        return now.plusSeconds(Math.round(request.minutes() * 60));
    }

    /** When to stop working and begin to close up. */
    public OffsetDateTime stopsWork() {
        return ends().minusSeconds(Math.round(plan.stop().closeMinutes() * 60));
    }

    /** Whether the light is what ends it. */
    public boolean endsWithTheLight() {
        return request.minutes() < question.minutes();
    }
}
