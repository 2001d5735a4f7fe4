package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.ordering.OrderLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a bought thing is for, as a person would write it: copies of one joint together, joints without a name by their parts. */
final class UseWords {
    private static final String FASTENERS = ".*(bolt|screw|nut|clip|stud|plug|belt|circlip|tap|seat)s?";

    private final Engine engine;
    private final Names names;

    UseWords(Engine engine) {
        this.engine = engine;
        this.names = new Names(engine);
    }

    /** Equal for uses that go into one phrase. */
    String alike(String id) {
        return between(id)
                .map(joint -> String.join("|", names.parts(joint.between())))
                .orElseGet(() -> name(id))
                .replaceAll("[0-9]+", "#");
    }

    /** One phrase for uses that are alike: "for the head bolts", "between the EGR cooler and the EGR valve". */
    String phrase(List<OrderLine.Use> alike) {
        List<String> ids = alike.stream().map(OrderLine.Use::id).distinct().toList();
        Optional<Joint> first = between(ids.getFirst());
        if (first.isEmpty()) {
            return "for " + listed(ids.stream().map(this::name).toList());
        }
        if (ids.size() == 1) {
            return "between " + names.the(first.get().between().getFirst()) + " and " + names.theOthers(first.get());
        }
        List<String> sides = new ArrayList<>();
        for (int side = 0; side < first.get().between().size(); side++) {
            int at = side;
            sides.add(listed(ids.stream()
                    .map(id -> names.part(engine.joint(id).between().get(at)))
                    .toList()));
        }
        return "between " + Figures.list(sides);
    }

    private static String listed(List<String> names) {
        return Figures.list(Names.gathered(names.stream().distinct().toList()).stream()
                .map(Names::withArticle)
                .toList());
    }

    /** A joint of one part and another, or copies of it, that has no name of its own, nor one that says what it is held by. */
    private Optional<Joint> between(String id) {
        return engine.findJoint(id)
                .filter(joint -> Names.gathered(names.parts(joint.between()
                                        .subList(1, joint.between().size())))
                                .size()
                        == 1)
                .filter(joint -> joint.name().equalsIgnoreCase(joint.id().replace('-', ' '))
                        || joint.name().contains(" at "))
                .filter(joint -> !joint.name().replaceAll("[ 0-9]+$", "").matches(FASTENERS));
    }

    private String name(String id) {
        return engine.findReady(id)
                .filter(ready -> ready.kind() == ReadyKind.DRAIN)
                .flatMap(Ready::joint)
                .map(names::any)
                .orElseGet(() -> names.any(id));
    }
}
