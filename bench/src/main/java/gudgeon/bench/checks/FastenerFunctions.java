package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.bolting.Bearing;
import gudgeon.core.bolting.CrossPattern;
import gudgeon.core.bolting.Friction;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.Preload;
import gudgeon.core.bolting.PropertyClass;
import gudgeon.core.bolting.ThreadTolerance;
import gudgeon.core.bolting.Tightening;
import gudgeon.core.bolting.UnifiedThread;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/** Threads, strength, preload, torque, patterns. */
final class FastenerFunctions {
    /** Any size on the lower side of the step of class 8.8. */
    private static final double SMALL_mm = 10;

    private FastenerFunctions() {}

    static void into(Map<String, Computation> all) {
        threads(all);
        strength(all);
        tightening(all);
    }

    private static void threads(Map<String, Computation> all) {
        all.put("thread_stress_area", metric(MetricThread::stressArea_mm2));
        all.put("thread_pitch_diameter", metric(MetricThread::pitchDiameter_mm));
        all.put("thread_minor_diameter", metric(MetricThread::minorDiameter_mm));
        all.put("thread_root_diameter", metric(MetricThread::rootDiameter_mm));
        all.put("thread_stress_diameter", metric(MetricThread::stressDiameter_mm));
        all.put("thread_external_depth", metric(MetricThread::externalDepth_mm));
        all.put("thread_engagement_depth", metric(MetricThread::bearingDepth_mm));
        all.put("thread_lead_angle", metric(MetricThread::leadAngle_deg));
        all.put("external_thread_limit", one(FastenerFunctions::limit));
        all.put("unified_stress_area", one(args -> unified(args).stressArea_in2()));
        all.put("unified_pitch_diameter", one(args -> unified(args).pitchDiameter_in()));
    }

    private static void strength(Map<String, Computation> all) {
        all.put("proof_load", one(args -> grade(args).proofLoad_N(thread(args))));
        all.put("ultimate_tensile_load", one(args -> grade(args).ultimateLoad_N(thread(args))));
        all.put("tensile_strength_min", graded(PropertyClass::tensileStrength_MPa));
        all.put("proof_stress_rp02_min", graded(PropertyClass::yield_MPa));
        all.put("elongation_min", graded(PropertyClass::elongation_percent));
        all.put("proof_load_stress", graded(PropertyClass::proofStress_MPa));
    }

    private static void tightening(Map<String, Computation> all) {
        all.put("assembly_preload", one(args -> preload_N(args) / 1000));
        all.put("tightening_torque", one(FastenerFunctions::torque_Nm));
        all.put("minimum_preload", one(args -> Preload.least(args.number("preload_max_kN"), args.number("tightening_factor"))));
        all.put("preload_from_angle", one(FastenerFunctions::fromAngle_N));
        all.put("cross_pattern_order", args -> CrossPattern.order(args.whole("bolts")).stream()
                .mapToDouble(Integer::doubleValue)
                .toArray());
        all.put(
                "nut_factor",
                one(args ->
                        Preload.nutFactor(args.number("torque_Nm"), args.number("preload_N"), args.number("d_mm"))));
    }

    private static Computation metric(ToDoubleFunction<MetricThread> size) {
        return one(args -> size.applyAsDouble(thread(args)));
    }

    private static Computation graded(ToDoubleBiFunction<PropertyClass, Double> value) {
        return one(args -> value.applyAsDouble(grade(args), args.number("d_mm", SMALL_mm)));
    }

    private static MetricThread thread(Args args) {
        return new MetricThread(args.number("d_mm"), args.number("pitch_mm"));
    }

    private static UnifiedThread unified(Args args) {
        return new UnifiedThread(args.number("d_in"), args.number("threads_per_inch"));
    }

    private static PropertyClass grade(Args args) {
        String written = args.text("property_class");
        return PropertyClass.find(written)
                .orElseThrow(() -> new IllegalArgumentException("property class \"" + written + "\" is not known"));
    }

    private static double limit(Args args) {
        ThreadTolerance tolerance = ThreadTolerance.parse(args.text("tolerance_class"));
        MetricThread thread = thread(args);
        return switch (args.text("limit")) {
            case "major_max" -> tolerance.majorMax_mm(thread);
            case "major_min" -> tolerance.majorMin_mm(thread);
            case "pitch_max" -> tolerance.pitchMax_mm(thread);
            case "pitch_min" -> tolerance.pitchMin_mm(thread);
            default -> throw new IllegalArgumentException("limit \"" + args.text("limit") + "\" is not known");
        };
    }

    private static double preload_N(Args args) {
        return Preload.atYieldShare_N(
                thread(args), grade(args), args.number("yield_utilisation"), args.number("mu_thread"));
    }

    private static double torque_Nm(Args args) {
        Bearing bearing = new Bearing(args.number("head_bearing_d_mm"), args.number("hole_d_mm"));
        Friction friction = new Friction(args.number("mu_thread"), args.number("mu_head"));
        return new Tightening(thread(args), bearing).torque_Nm(preload_N(args), friction);
    }

    private static double fromAngle_N(Args args) {
        return new Preload.Spring(
                        args.number("modulus_GPa"),
                        args.number("area_mm2"),
                        args.number("length_mm"),
                        args.number("joint_compliance_mm_per_N"))
                .preloadFromAngle_N(args.number("pitch_mm"), args.number("angle_deg"));
    }
}
