package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.geometry.CombustionSpace;
import gudgeon.core.geometry.Compression;
import gudgeon.core.geometry.Cylinder;
import gudgeon.core.geometry.SliderCrank;
import gudgeon.core.geometry.StandardAtmosphere;
import gudgeon.core.geometry.ValveTiming;
import java.util.Map;

/** Volumes, compression, timing and the standard air. */
final class GeometryFunctions {
    private static final double MM_PER_INCH = 25.4;
    private static final double CM3_PER_CUBIC_INCH = 16.387064;

    private GeometryFunctions() {}

    static void into(Map<String, Computation> all) {
        volumes(all);
        timing(all);
        air(all);
    }

    private static void volumes(Map<String, Computation> all) {
        all.put("cylinder_displacement", one(GeometryFunctions::displacement));
        all.put("compression_ratio", one(args -> ratio(args.number("volume_bdc_in3"), args.number("volume_tdc_in3"))));
        all.put("clearance_volume", one(args -> space(args).clearance_cm3()));
        all.put("compression_ratio_from_stack", one(args -> space(args).compressionRatio()));
        all.put(
                "compression_ratio_after_change",
                one(args -> CombustionSpace.ratioAfter(
                        args.number("swept_volume_cm3"),
                        args.number("compression_ratio"),
                        args.number("clearance_height_change_mm"),
                        args.findNumber("clearance_area_mm2").orElseGet(() ->
                                new Cylinder(args.number("clearance_d_mm"), 1).area_mm2()))));
        all.put("piston_position", one(args -> crank(args).pistonDrop_mm(args.number("crank_angle_deg"))));
        all.put(
                "effective_compression_ratio",
                one(args -> crank(args)
                        .effectiveRatio(args.number("compression_ratio"), args.number("inlet_closes_deg_abdc"))));
    }

    private static void timing(Map<String, Computation> all) {
        all.put(
                "inlet_closing_angle",
                one(args -> ValveTiming.closing_deg(args.number("inlet_opens_deg_btdc"), args.number("duration_deg"))));
        all.put(
                "exhaust_duration",
                one(args -> ValveTiming.duration_deg(
                        args.number("exhaust_opens_deg_bbdc"), args.number("exhaust_closes_deg_atdc"))));
        all.put(
                "inlet_duration",
                one(args -> ValveTiming.duration_deg(
                        args.number("inlet_opens_deg_btdc"), args.number("inlet_closes_deg_abdc"))));
        all.put(
                "valve_overlap",
                one(args -> new ValveTiming(
                                args.number("inlet_opens_deg_btdc"), 0, 0, args.number("exhaust_closes_deg_atdc"))
                        .overlap_deg()));
        all.put("crank_travel_ignition_to_inlet_opening", one(args -> {
            if (args.whole("strokes") != 4) {
                throw new IllegalArgumentException("only four strokes have an inlet opening after ignition");
            }
            return ValveTiming.ignitionToInlet_deg(
                    args.number("ignition_deg_btdc"), args.number("inlet_opens_deg_btdc"));
        }));
    }

    private static void air(Map<String, Computation> all) {
        all.put(
                "polytropic_pressure_ratio",
                one(args -> Compression.pressureRatio(args.number("volume_ratio"), args.number("exponent"))));
        all.put(
                "air_isentropic_temperature_variable_cp",
                one(args -> Compression.isentropicTemperature_K(args.number("volume_ratio"), args.number("T1_K"))));
        all.put(
                "air_isentropic_pressure_variable_cp",
                one(args -> args.number("p1_kPa")
                        * args.number("volume_ratio")
                        * Compression.isentropicTemperature_K(args.number("volume_ratio"), args.number("T1_K"))
                        / args.number("T1_K")));
        all.put(
                "standard_atmosphere_pressure",
                one(args -> StandardAtmosphere.pressure_Pa(args.number("altitude_m")) / 100));
        all.put(
                "standard_atmosphere_temperature",
                one(args -> StandardAtmosphere.temperature_K(args.number("altitude_m"))));
        all.put(
                "standard_atmosphere_density",
                one(args -> StandardAtmosphere.density_kg_per_m3(args.number("altitude_m"))));
    }

    private static double displacement(Args args) {
        if (args.has("bore_in")) {
            return new Cylinder(args.number("bore_in") * MM_PER_INCH, args.number("stroke_in") * MM_PER_INCH).swept_cm3()
                    / CM3_PER_CUBIC_INCH
                    * args.number("cylinders");
        }
        return new Cylinder(args.number("bore_mm"), args.number("stroke_mm")).swept_cm3() * args.number("cylinders");
    }

    private static double ratio(double bottom, double top) {
        if (!(top > 0) || !(bottom > top)) {
            throw new IllegalArgumentException("the volume at the top must be above 0 and below that at the bottom");
        }
        return bottom / top;
    }

    private static CombustionSpace space(Args args) {
        return new CombustionSpace(
                new Cylinder(args.number("bore_mm"), args.number("stroke_mm")),
                args.number("chamber_cm3"),
                args.number("gasket_thickness_mm"),
                args.number("gasket_d_mm"),
                args.number("deck_clearance_mm"),
                args.number("piston_dish_cm3"));
    }

    private static SliderCrank crank(Args args) {
        return new SliderCrank(args.number("crank_radius_mm"), args.number("rod_length_mm"));
    }
}
