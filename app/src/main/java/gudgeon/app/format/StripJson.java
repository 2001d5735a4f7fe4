package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Ready;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlan.Operation;
import gudgeon.core.planning.StripRequest;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The answer to a strip question as JSON. Keys and their meaning: docs/json.md. */
public final class StripJson {
    private StripJson() {}

    /** One JSON document; the same arguments give the same text. */
    public static String write(Engine engine, StripRequest request, StripAnswer answer) {
        ObjectNode root = JsonText.object();
        root.set("engine", JsonText.identity(engine));
        root.set("request", request(engine, request));
        switch (answer) {
            case StripPlan plan -> planned(root, engine, plan);
            case Blocked blocked -> blocked(root, blocked);
        }
        return JsonText.write(root);
    }

    static ObjectNode request(Engine engine, StripRequest request) {
        ObjectNode node = JsonText.object();
        node.set("reach", JsonText.strings(request.target().off()));
        node.set("aside", JsonText.strings(request.target().aside()));
        node.set("open", JsonText.strings(request.target().open()));
        node.set("measure", JsonText.strings(request.target().measure()));
        node.set("undone", JsonText.strings(request.undone()));
        node.set("ready_done", JsonText.strings(request.done()));
        node.set("will_not_come", JsonText.strings(request.willNotCome()));
        node.set("ways_of_lifting", JsonText.ways(request.means().ways()));
        node.put("worth_per_hour", request.means().worthPerHour());
        node.put("order_states", request.means().orderStates());
        node.set("changeover", JsonText.changeover(engine));
        return node;
    }

    private static void planned(ObjectNode root, Engine engine, StripPlan plan) {
        root.put("status", "planned");
        root.put("objective", "opening, then order");
        root.put("total_seconds", plan.totalSeconds());
        root.set("opening", opening(plan.opening()));
        root.set("order", JsonText.object()
                .put("changeover_seconds", plan.order().changeoverSeconds())
                .put("lower_bound", plan.order().lowerBoundSeconds())
                .put("proven", plan.order().proven())
                .put("method", plan.order().method())
                .put("expanded", plan.order().expanded()));
        root.set("lifts", JsonText.object()
                .put("count", plan.lifts().count())
                .put("seconds", plan.lifts().seconds()));
        root.set("operations", operations(engine, plan.operations()));
        root.set("destroyed", JsonText.spends(plan.destroyed()));
        root.set("landmarks", JsonText.lists(plan.opening().landmarks()));
    }

    private static ObjectNode opening(StripPlan.Opening opening) {
        ObjectNode node = JsonText.object()
                .put("seconds", opening.costSeconds())
                .put("lower_bound", opening.lowerBoundSeconds())
                .put("proven", opening.proven())
                .put("joints_seconds", opening.jointsSeconds())
                .put("ready_seconds", opening.readySeconds());
        if (opening.money().isPresent()) {
            node.put("money", opening.money().getAsDouble());
        } else {
            node.putNull("money");
        }
        node.set("chosen", JsonText.strings(opening.chosen()));
        return node;
    }

    private static ArrayNode operations(Engine engine, List<Operation> operations) {
        ArrayNode array = JsonText.array();
        operations.forEach(operation -> array.add(operation(engine, operation)));
        return array;
    }

    private static ObjectNode operation(Engine engine, Operation operation) {
        ObjectNode node = JsonText.object();
        node.put("n", operation.number());
        node.put("kind", word(operation.kind()));
        node.put("id", operation.id());
        joint(engine, operation).ifPresentOrElse(id -> node.put("joint", id), () -> node.putNull("joint"));
        boolean lift = operation.kind() == StripPlan.Kind.LIFT;
        node.set("parts", JsonText.strings(lift ? List.of() : operation.pieces()));
        node.set("piece", JsonText.strings(lift ? operation.pieces() : List.of()));
        if (operation.lift() != null) {
            ObjectNode how = JsonText.object()
                    .put("mass_kg", operation.lift().massKilograms())
                    .put("way", operation.lift().way())
                    .put("aside", operation.lift().aside());
            how.set("hangs_on", JsonText.strings(operation.lift().hangsOn()));
            node.set("lift", how);
        } else {
            node.putNull("lift");
        }
        place(node, operation.place());
        node.put("seconds", operation.seconds());
        node.set("destroys", JsonText.spends(operation.destroys()));
        node.set("cautions", JsonText.strings(operation.cautions()));
        node.set("why", whys(operation.why()));
        ObjectNode after = JsonText.object();
        after.set("off", JsonText.strings(operation.after().off()));
        after.set("aside", JsonText.strings(operation.after().aside()));
        node.set("state_after", after);
        return node;
    }

    static void place(ObjectNode node, StripPlan.Place place) {
        node.put("zone", place.zone());
        node.set("tools", JsonText.strings(place.tools()));
        node.put("from_zone", place.fromZone());
        node.put("changeover_seconds", place.changeoverSeconds());
    }

    private static Optional<String> joint(Engine engine, Operation operation) {
        return switch (operation.kind()) {
            case UNDO, CUT -> Optional.of(operation.id());
            case LIFT -> Optional.empty();
            case CRACK_LOOSE, RECORD, MAKE_SAFE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL ->
                engine.findReady(operation.id()).flatMap(Ready::joint);
        };
    }

    private static ArrayNode whys(List<StripPlan.Why> whys) {
        ArrayNode array = JsonText.array();
        for (StripPlan.Why why : whys) {
            array.addObject().put("kind", word(why.kind())).set("ids", JsonText.strings(why.ids()));
        }
        return array;
    }

    private static void blocked(ObjectNode root, Blocked blocked) {
        root.put("status", "blocked");
        root.put("objective", "opening, then order");
        ArrayNode reasons = JsonText.array();
        for (Blocked.Reason reason : blocked.reasons()) {
            ObjectNode node = reasons.addObject().put("kind", word(reason.kind()));
            node.set("about", JsonText.strings(reason.about()));
            if (reason.massKilograms() > 0) {
                node.put("mass_kg", reason.massKilograms());
            } else {
                node.putNull("mass_kg");
            }
            node.set("unblocked_by", JsonText.strings(reason.unblockedBy()));
        }
        root.set("blocked_by", reasons);
        root.set("landmarks", JsonText.lists(blocked.landmarks()));
    }

    /** The words of an enum constant: {@code MAKE_SAFE} is "make safe". */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
