package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a person who asked for a part should know when it leaves inside something heavier: it is off (docs/planning.md), but
 * not on its own, and these joints would free it.
 */
public final class InsideWords {
    private InsideWords() {}

    /** One sentence for each part to reach that comes off inside something heavier, in the order of the request. */
    public static List<String> of(Engine engine, StripRequest request, StripPlan plan) {
        List<String> sentences = new ArrayList<>();
        for (String part : request.target().off()) {
            holder(engine, plan, part).ifPresent(holder -> {
                List<String> open = left(engine, request, plan, part);
                if (!open.isEmpty()) {
                    sentences.add(sentence(new Names(engine), part, holder, open));
                }
            });
        }
        return sentences;
    }

    private static String sentence(Names names, String part, String holder, List<String> open) {
        return Names.capital(names.part(part)) + " comes off inside " + names.part(holder)
                + "; to have it on its own, add --open " + String.join(" --open ", open);
    }

    /** The heaviest part that is lifted with it, when that is another one. */
    private static Optional<String> holder(Engine engine, StripPlan plan, String part) {
        return plan.operations().stream()
                .filter(step -> step.kind() == StripPlan.Kind.LIFT)
                .filter(step -> step.pieces().contains(part))
                .reduce((first, last) -> last)
                .flatMap(lift -> lift.pieces().stream()
                        .map(engine::part)
                        .max(Comparator.comparingDouble(Part::massKilograms)))
                .map(Part::id)
                .filter(heaviest -> !heaviest.equals(part));
    }

    /** The joints of the part that are still together at the end; none when one of them is for licensed practice. */
    private static List<String> left(Engine engine, StripRequest request, StripPlan plan, String part) {
        List<Joint> together = engine.joints().stream()
                .filter(joint -> joint.between().contains(part))
                .filter(joint -> !plan.opening().chosen().contains(joint.id()))
                .filter(joint -> !request.undone().contains(joint.id()))
                .toList();
        boolean licensed = together.stream().anyMatch(joint -> joint.freedom().licensed());
        return licensed ? List.of() : together.stream().map(Joint::id).toList();
    }
}
