package gudgeon.app.cli;

import gudgeon.app.desk.BoltAngle;
import gudgeon.app.desk.BoltThread;
import gudgeon.app.desk.BoltTorque;
import gudgeon.app.desk.PatternQuestion;
import gudgeon.app.desk.WrenchQuestion;
import gudgeon.core.bolting.Friction;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.PropertyClass;
import gudgeon.core.bolting.StretchCheck;
import gudgeon.core.bolting.ThreadTolerance;
import gudgeon.core.bolting.Tightening;
import gudgeon.core.bolting.UnifiedThread;
import gudgeon.core.planning.Resume;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Answers about bolts as maps, ready to be written as JSON; keys are in docs/json.md. */
final class BoltJson {
    private BoltJson() {}

    static Map<String, @Nullable Object> thread(BoltThread.Answer answer) {
        MetricThread thread = answer.thread();
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("thread", answer.unified().map(BoltJson::unified).orElseGet(thread::designation));
        map.put("diameter_mm", thread.diameter_mm());
        map.put("pitch_mm", thread.pitch_mm());
        map.put("pitch_diameter_mm", thread.pitchDiameter_mm());
        map.put("minor_diameter_mm", thread.minorDiameter_mm());
        map.put("root_diameter_mm", thread.rootDiameter_mm());
        map.put("lead_angle_deg", thread.leadAngle_deg());
        map.put("stress_area_mm2", thread.stressArea_mm2());
        map.put("nominal_stress_area_mm2", thread.nominalStressArea_mm2());
        map.put(
                "stress_area_in2",
                answer.unified().map(known -> known.stressArea_in2()).orElse(null));
        map.put("class", answer.grade().map(grade -> grade(grade, thread)).orElse(null));
        map.put("limits", answer.limits().map(BoltJson::limits).orElse(null));
        return map;
    }

    private static String unified(UnifiedThread thread) {
        return thread.diameter_in() + "-" + Math.round(thread.threadsPerInch());
    }

    private static Map<String, @Nullable Object> grade(PropertyClass grade, MetricThread thread) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("name", grade.written());
        map.put("yield_MPa", grade.yield_MPa(thread.diameter_mm()));
        map.put("tensile_strength_MPa", grade.tensileStrength_MPa(thread.diameter_mm()));
        map.put("proof_stress_MPa", grade.proofStress_MPa(thread.diameter_mm()));
        map.put("proof_load_N", grade.proofLoad_N(thread));
        map.put("ultimate_load_N", grade.ultimateLoad_N(thread));
        return map;
    }

    private static Map<String, @Nullable Object> limits(ThreadTolerance.Limits limits) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("major_max_mm", limits.majorMax_mm());
        map.put("major_min_mm", limits.majorMin_mm());
        map.put("pitch_max_mm", limits.pitchMax_mm());
        map.put("pitch_min_mm", limits.pitchMin_mm());
        return map;
    }

    private static Map<String, @Nullable Object> bolt(BoltTorque.Bolt bolt) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("thread", bolt.tightening().thread().designation());
        map.put("class", bolt.grade().written());
        map.put("head_bearing_mm", bolt.tightening().bearing().outer_mm());
        map.put("hole_mm", bolt.tightening().bearing().hole_mm());
        map.put("typical_head", bolt.typicalHead());
        map.put("friction_least", friction(bolt.range().least()));
        map.put("friction_most", friction(bolt.range().most()));
        return map;
    }

    private static Map<String, @Nullable Object> friction(Friction friction) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("thread", friction.thread());
        map.put("head", friction.head());
        return map;
    }

    static Map<String, @Nullable Object> forShare(BoltTorque.ForShare answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("request", bolt(answer.bolt()));
        map.put("share_of_yield", answer.share());
        map.put(
                "points",
                answer.points().stream()
                        .map(point -> {
                            Map<String, @Nullable Object> at = new LinkedHashMap<>();
                            at.put("friction", friction(point.friction()));
                            at.put("preload_N", point.preload_N());
                            at.put("torque_Nm", point.torques().total_Nm());
                            at.put("lead_Nm", point.torques().lead_Nm());
                            at.put("thread_Nm", point.torques().thread_Nm());
                            at.put("head_Nm", point.torques().head_Nm());
                            return at;
                        })
                        .toList());
        return map;
    }

    static Map<String, @Nullable Object> ofTorque(BoltTorque.OfTorque answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("request", bolt(answer.bolt()));
        map.put("torque_Nm", answer.torque().value());
        map.put("low", point(answer.band().low()));
        map.put("likely", point(answer.band().likely()));
        map.put("high", point(answer.band().high()));
        return map;
    }

    private static Map<String, @Nullable Object> point(Tightening.Point point) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("friction", friction(point.friction()));
        map.put("preload_N", point.preload_N());
        map.put("stress_MPa", point.stress_MPa());
        map.put("share_of_yield", point.yieldShare());
        return map;
    }

    static Map<String, @Nullable Object> angle(BoltAngle.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("thread", answer.thread().designation());
        map.put("angle_deg", answer.angle_deg());
        map.put("length_mm", answer.spring().length_mm());
        map.put("area_mm2", answer.spring().area_mm2());
        map.put("modulus_GPa", answer.spring().modulus_GPa());
        map.put("joint_compliance_mm_per_N", answer.spring().jointCompliance_mm_per_N());
        map.put("preload_gained_N", answer.gained_N());
        map.put("stretch_mm", answer.stretch_mm());
        map.put("proof_load_N", answer.proof_N().orElse(null));
        map.put("angle_to_proof_deg", answer.toProof_deg().orElse(null));
        return map;
    }

    static Map<String, @Nullable Object> wrench(WrenchQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("torque_Nm", answer.torque().value());
        map.put("factor", answer.adaptor().map(adaptor -> adaptor.factor()).orElse(1.0));
        map.put("setting_Nm", answer.setting_Nm());
        map.put("setting", answer.torque().like(answer.setting_Nm(), 3));
        map.put("take", answer.choice().best().map(wrench -> wrench.name()).orElse(null));
        map.put(
                "wrenches",
                answer.choice().judged().stream()
                        .map(judged -> {
                            Map<String, @Nullable Object> one = new LinkedHashMap<>();
                            one.put("name", judged.wrench().name());
                            one.put("least_Nm", judged.wrench().least_Nm());
                            one.put("most_Nm", judged.wrench().most_Nm());
                            one.put("fit", judged.fit());
                            return one;
                        })
                        .toList());
        return map;
    }

    static Map<String, @Nullable Object> pattern(PatternQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("order", answer.order());
        map.put(
                "places",
                answer.spots().stream()
                        .map(spot -> List.of(spot.x_mm(), spot.y_mm()))
                        .toList());
        answer.check().ifPresent(check -> {
            map.put("faults", check.faults());
            map.put("lopsided", finite(check.lopsided()));
            map.put("lopsided_ours", finite(check.ours()));
            map.put("lopsided_in_line", finite(check.inLine()));
        });
        return map;
    }

    private static @Nullable Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }

    static Map<String, @Nullable Object> reuse(StretchCheck check) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("single_use", check.singleUse());
        map.put("length", check.lengthVerdict());
        map.put("neck", check.neckVerdict());
        map.put("advice", check.advice());
        return map;
    }

    static Map<String, @Nullable Object> resume(Resume resume) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("turn", resume.turn());
        map.put("leave", resume.leave());
        map.put("spent", resume.spent());
        return map;
    }
}
