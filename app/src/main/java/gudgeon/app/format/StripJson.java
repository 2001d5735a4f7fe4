package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Ready;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.Spills;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlan.Operation;
import gudgeon.core.planning.StripRequest;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The answer to a strip question as JSON. Keys and their meaning: docs/json.md. */
public final class StripJson {
    private StripJson() {}

    /** One JSON document; the same arguments give the same text. */
    public static String write(Engine engine, StripRequest request, StripAnswer answer) {
        ObjectNode root = JsonPieces.object();
        root.set("engine", JsonEcho.identity(engine));
        root.set("request", request(engine, request));
        switch (answer) {
            case StripPlan plan -> planned(root, engine, plan);
            case Blocked blocked -> blocked(root, blocked);
        }
        return JsonPieces.text(root);
    }

    static ObjectNode request(Engine engine, StripRequest request) {
        ObjectNode node = JsonPieces.object();
        node.set("reach", JsonPieces.strings(request.target().off()));
        node.set("aside", JsonPieces.strings(request.target().aside()));
        node.set("open", JsonPieces.strings(request.target().open()));
        node.set("measure", JsonPieces.strings(request.target().measure()));
        node.set("undone", JsonPieces.strings(request.undone()));
        node.set("ready_done", JsonPieces.strings(request.done()));
        request.underway().ifPresent(underway -> node.set("away", JsonPieces.strings(underway.away())));
        node.set("will_not_come", JsonPieces.strings(request.willNotCome()));
        node.set("ways_of_lifting", JsonEcho.ways(request.means().ways()));
        node.put("worth_per_hour", request.means().worthPerHour());
        node.put("order_states", request.means().orderStates());
        node.set("changeover", JsonEcho.changeover(engine));
        return node;
    }

    private static void planned(ObjectNode root, Engine engine, StripPlan plan) {
        root.put("status", "planned");
        root.put("objective", "opening, then order");
        root.put("total_seconds", plan.totalSeconds());
        root.set("opening", opening(plan.opening()));
        root.set("order", JsonPieces.object()
                .put("changeover_seconds", plan.order().changeoverSeconds())
                .put("lower_bound", plan.order().lowerBoundSeconds())
                .put("proven", plan.order().proven())
                .put("method", plan.order().method())
                .put("expanded", plan.order().expanded()));
        root.set("lifts", JsonPieces.object()
                .put("count", plan.lifts().count())
                .put("seconds", plan.lifts().seconds()));
        root.set("operations", operations(engine, plan.operations()));
        root.set("destroyed", JsonPieces.spends(plan.destroyed()));
        root.set("drains", drains(engine, plan));
        root.set("landmarks", JsonEcho.lists(plan.opening().landmarks()));
    }

    /** Of every circuit that the plan opens and whose levels are known: what each of its drains would leave to spill. */
    private static ArrayNode drains(Engine engine, StripPlan plan) {
        List<String> joints = plan.operations().stream()
                .filter(operation -> operation.kind() == StripPlan.Kind.UNDO || operation.kind() == StripPlan.Kind.CUT)
                .map(Operation::id)
                .toList();
        ArrayNode circuits = JsonPieces.array();
        engine.circuits().forEach(circuit -> {
            boolean opened = joints.stream()
                    .anyMatch(joint -> engine.joint(joint).freedom().opens().contains(circuit.id()));
            List<Spills.DrainChoice> choices = Spills.drains(engine, circuit.id(), joints);
            if (opened && !choices.isEmpty()) {
                ArrayNode drains = circuits.addObject()
                        .put("circuit", circuit.id())
                        .putArray("by_drain");
                choices.forEach(choice -> drains.addObject()
                        .put("drain", choice.drain())
                        .put("caught_litres", choice.caught_litres())
                        .put("spilled_litres", choice.spilled_litres())
                        .put("left_litres", choice.left_litres())
                        .put("seconds", choice.seconds()));
            }
        });
        return circuits;
    }

    private static ObjectNode opening(StripPlan.Opening opening) {
        ObjectNode node = JsonPieces.object()
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
        node.set("chosen", JsonPieces.strings(opening.chosen()));
        return node;
    }

    private static ArrayNode operations(Engine engine, List<Operation> operations) {
        ArrayNode array = JsonPieces.array();
        operations.forEach(operation -> array.add(operation(engine, operation)));
        return array;
    }

    private static ObjectNode operation(Engine engine, Operation operation) {
        ObjectNode node = JsonPieces.object();
        node.put("n", operation.number());
        node.put("kind", JsonEcho.word(operation.kind()));
        node.put("id", operation.id());
        joint(engine, operation).ifPresentOrElse(id -> node.put("joint", id), () -> node.putNull("joint"));
        boolean lift = operation.kind() == StripPlan.Kind.LIFT;
        node.set("parts", JsonPieces.strings(lift ? List.of() : operation.pieces()));
        node.set("piece", JsonPieces.strings(lift ? operation.pieces() : List.of()));
        if (operation.lift() != null) {
            ObjectNode how = JsonPieces.object()
                    .put("mass_kg", operation.lift().massKilograms())
                    .put("way", operation.lift().way())
                    .put("aside", operation.lift().aside());
            how.set("hangs_on", JsonPieces.strings(operation.lift().hangsOn()));
            node.set("lift", how);
        } else {
            node.putNull("lift");
        }
        place(node, operation.place());
        node.put("seconds", operation.seconds());
        node.set("destroys", JsonPieces.spends(operation.destroys()));
        node.set("cautions", JsonPieces.strings(operation.cautions()));
        node.set("why", whys(operation.why()));
        ObjectNode after = JsonPieces.object();
        after.set("off", JsonPieces.strings(operation.after().off()));
        after.set("aside", JsonPieces.strings(operation.after().aside()));
        node.set("state_after", after);
        if (!operation.after().losses().isEmpty()) {
            ArrayNode losses = node.putArray("runs_out");
            operation.after().losses().forEach(loss -> losses.addObject()
                    .put("circuit", loss.circuit())
                    .put("litres", loss.litres())
                    .put("left_litres", loss.left_litres())
                    .put("caught", loss.caught()));
        }
        return node;
    }

    static void place(ObjectNode node, StripPlan.Place place) {
        node.put("zone", place.zone());
        node.set("tools", JsonPieces.strings(place.tools()));
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
        ArrayNode array = JsonPieces.array();
        for (StripPlan.Why why : whys) {
            array.addObject().put("kind", JsonEcho.word(why.kind())).set("ids", JsonPieces.strings(why.ids()));
        }
        return array;
    }

    private static void blocked(ObjectNode root, Blocked blocked) {
        root.put("status", "blocked");
        root.put("objective", "opening, then order");
        ArrayNode reasons = JsonPieces.array();
        for (Blocked.Reason reason : blocked.reasons()) {
            ObjectNode node = reasons.addObject().put("kind", JsonEcho.word(reason.kind()));
            node.set("about", JsonPieces.strings(reason.about()));
            if (reason.massKilograms() > 0) {
                node.put("mass_kg", reason.massKilograms());
            } else {
                node.putNull("mass_kg");
            }
            node.set("unblocked_by", JsonPieces.strings(reason.unblockedBy()));
        }
        root.set("blocked_by", reasons);
        root.set("landmarks", JsonEcho.lists(blocked.landmarks()));
    }
}
