package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.StripRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The answer to a build question as JSON. Keys and their meaning: docs/json.md. */
public final class BuildJson {
    private BuildJson() {}

    /** One JSON document; the same arguments give the same text. */
    public static String write(Engine engine, StripRequest strip, BuildRequest request, BuildPlan plan) {
        ObjectNode root = JsonPieces.object();
        root.set("engine", JsonEcho.identity(engine));
        root.set("request", request(engine, strip, request));
        root.put("status", plan.blocked().isEmpty() ? "planned" : "planned, with blocked steps");
        root.set("totals", JsonPieces.object()
                .put("work_seconds", plan.totals().workSeconds())
                .put("wait_seconds", plan.totals().waitSeconds())
                .put("changeover_seconds", plan.totals().changeoverSeconds())
                .put("changeover_lower_bound", plan.totals().changeoverLowerBoundSeconds())
                .put("total_seconds", plan.totals().totalSeconds()));
        ArrayNode operations = JsonPieces.array();
        plan.operations().forEach(operation -> operations.add(operation(operation)));
        root.set("operations", operations);
        root.set("accounts", accounts(plan.accounts()));
        ArrayNode corrections = JsonPieces.array();
        for (BuildPlan.Correction correction : plan.corrections()) {
            corrections.addObject()
                    .put("kind", JsonEcho.word(correction.kind()))
                    .put("about", correction.about())
                    .set("ids", JsonPieces.strings(correction.ids()));
        }
        root.set("corrections", corrections);
        ArrayNode cures = JsonPieces.array();
        plan.cures().forEach(cure -> cures.addObject().put("joint", cure.joint()).put("seconds_left", cure.secondsLeft()));
        root.set("cures", cures);
        return JsonPieces.text(root);
    }

    private static ObjectNode request(Engine engine, StripRequest strip, BuildRequest request) {
        ObjectNode node = JsonPieces.object();
        node.set("strip", StripJson.request(engine, strip));
        ArrayNode steps = JsonPieces.array();
        for (BuildRequest.Step step : request.steps()) {
            steps.addObject()
                    .put("kind", JsonEcho.word(step.kind()))
                    .put("id", step.id())
                    .set("parts", JsonPieces.strings(step.parts()));
        }
        node.set("steps", steps);
        node.set("ways_of_lifting", JsonEcho.ways(request.ways()));
        node.set("missing", JsonPieces.strings(request.missing()));
        node.set("confirmed", JsonPieces.strings(request.confirmed()));
        node.set("changeover", JsonEcho.changeover(engine));
        return node;
    }

    private static ObjectNode operation(Operation operation) {
        ObjectNode node = JsonPieces.object();
        node.put("n", operation.number());
        node.put("kind", JsonEcho.word(operation.kind()));
        node.put("id", operation.id());
        node.put("ref", operation.subject().ref());
        joint(node, operation);
        node.set("parts", JsonPieces.strings(operation.subject().parts()));
        StripJson.place(node, operation.place());
        node.put("start_seconds", operation.clock().startSeconds());
        node.put("seconds", operation.clock().seconds());
        tightening(node, operation.tightening());
        handling(node, operation.handling());
        node.set("inputs", inputs(operation.needs().inputs()));
        node.set("cautions", JsonPieces.strings(Cautions.catalogue().puttingTogether(operation.kind(), operation.needs().cautions())));
        node.put("text", operation.needs().text());
        node.set("after", JsonPieces.strings(operation.order().after()));
        node.set("lags", lags(operation.order().lags()));
        node.put("gate", operation.order().gate());
        node.set("blocked_by", lacks(operation.holdUp().blockedBy()));
        node.set("waits_for", JsonPieces.strings(operation.holdUp().waitsFor()));
        return node;
    }

    private static void joint(ObjectNode node, Operation operation) {
        switch (operation.kind()) {
            case SEAL, SNUG, TIGHTEN, STAGE, ANGLE -> node.put("joint", operation.subject().ref());
            case PLACE, RESTORE, FILL, BLEED, CHECK, WAIT -> node.putNull("joint");
        }
    }

    private static void tightening(ObjectNode node, BuildPlan.@Nullable Tightening tightening) {
        node.set("fasteners", JsonPieces.strings(tightening == null ? List.of() : tightening.fasteners()));
        node.putNull("stage").putNull("torque_Nm").putNull("angle_deg").putNull("thread_state");
        if (tightening == null) {
            return;
        }
        node.put("stage", tightening.stage());
        if (tightening.torque() != null) {
            node.put("torque_Nm", tightening.torque().newtonMetres());
        }
        if (tightening.angle() != null) {
            node.put("angle_deg", tightening.angle().degrees());
        }
        node.put("thread_state", tightening.threadState());
    }

    private static void handling(ObjectNode node, BuildPlan.@Nullable Handling handling) {
        if (handling == null) {
            node.putNull("lift");
            return;
        }
        ObjectNode how =
                JsonPieces.object().put("mass_kg", handling.massKilograms()).put("way", handling.way());
        how.set("hangs_on", JsonPieces.strings(handling.hangsOn()));
        ArrayNode marks = JsonPieces.array();
        handling.marks().forEach(mark -> marks.addObject()
                .put("part", mark.part())
                .set("keep", JsonPieces.strings(mark.keep())));
        how.set("marks", marks);
        node.set("lift", how);
    }

    private static ArrayNode inputs(List<BuildPlan.Input> inputs) {
        ArrayNode array = JsonPieces.array();
        for (BuildPlan.Input input : inputs) {
            ObjectNode node = array.addObject()
                    .put("kind", JsonEcho.word(input.kind()))
                    .put("for", input.joint())
                    .put("spec", input.spec())
                    .put("count", input.count());
            if (input.volume() == null) {
                node.putNull("litres");
            } else {
                node.put("litres", input.volume().litres());
            }
        }
        return array;
    }

    private static ArrayNode lags(List<BuildPlan.Lag> lags) {
        ArrayNode array = JsonPieces.array();
        for (BuildPlan.Lag lag : lags) {
            ObjectNode node = array.addObject().put("to", lag.to()).put("min", lag.minSeconds());
            if (lag.maxSeconds().isPresent()) {
                node.put("max", lag.maxSeconds().getAsLong());
            } else {
                node.putNull("max");
            }
        }
        return array;
    }

    private static ArrayNode lacks(List<BuildPlan.Lack> lacks) {
        ArrayNode array = JsonPieces.array();
        for (BuildPlan.Lack lack : lacks) {
            ObjectNode node = array.addObject().put("kind", JsonEcho.word(lack.kind()));
            node.set("about", JsonPieces.strings(lack.about()));
            node.set("unblocked_by", JsonPieces.strings(lack.unblockedBy()));
        }
        return array;
    }

    private static ArrayNode accounts(List<BuildPlan.Account> accounts) {
        ArrayNode array = JsonPieces.array();
        for (BuildPlan.Account account : accounts) {
            array.addObject()
                    .put("kind", JsonEcho.word(account.kind()))
                    .put("id", account.id())
                    .put("outcome", JsonEcho.word(account.outcome()))
                    .put("detail", account.detail())
                    .put("by", account.by())
                    .put("settled", account.settled());
        }
        return array;
    }
}
