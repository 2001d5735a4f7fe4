package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.measuring.FacePlane;
import gudgeon.core.measuring.FacePoint;
import gudgeon.core.measuring.PlanePoint;
import gudgeon.core.measuring.RoundFit;
import gudgeon.core.measuring.RoundZone;
import gudgeon.core.measuring.SurfacePlate;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Flatness and roundness. */
final class FormFunctions {
    private FormFunctions() {}

    static void into(Map<String, Computation> all) {
        all.put("moody_surface_plate_height_max", one(args -> 1e5 * plate(args).largest()));
        all.put("moody_surface_plate_height", one(args -> 1e5 * plate(args).height(station(args))));
        all.put(
                "surface_plate_flatness_tolerance",
                one(args -> SurfacePlate.tolerance_microinch(args.text("grade"), args.number("diagonal_in"))));
        all.put(
                "least_squares_plane_flatness",
                one(args -> FacePlane.leastSquares(face(args)).width()));
        all.put(
                "minimum_zone_flatness",
                one(args -> FacePlane.minimumZone(face(args)).width()));
        all.put("least_squares_circle_centre", args -> {
            RoundFit fit = RoundFit.leastSquares(outline(args));
            return new double[] {fit.x_mm(), fit.y_mm()};
        });
        all.put(
                "least_squares_circle_radius",
                one(args -> RoundFit.leastSquares(outline(args)).radius_mm()));
        all.put(
                "least_squares_circle_peak_to_valley",
                one(args -> RoundFit.leastSquares(outline(args)).width_mm()));
        all.put(
                "minimum_zone_circle_width",
                one(args -> RoundZone.of(outline(args)).fit().width_mm()));
    }

    private static SurfacePlate plate(Args args) {
        Map<SurfacePlate.Line, double[]> lines = new EnumMap<>(SurfacePlate.Line.class);
        args.node("readings_arcsec").forEachEntry((name, list) -> {
            double[] readings = new double[list.size()];
            for (int i = 0; i < readings.length; i++) {
                readings[i] = list.get(i).asDouble();
            }
            lines.put(SurfacePlate.Line.valueOf(name), readings);
        });
        return SurfacePlate.of(args.number("foot_spacing_in"), lines);
    }

    private static SurfacePlate.Station station(Args args) {
        return SurfacePlate.Station.find(args.text("station"))
                .orElseThrow(() -> new IllegalArgumentException("no station " + args.text("station")));
    }

    private static List<PlanePoint> outline(Args args) {
        return Arrays.stream(args.lists("points"))
                .map(point -> new PlanePoint(point[0], point[1]))
                .toList();
    }

    private static List<FacePoint> face(Args args) {
        if (args.has("points")) {
            return Arrays.stream(args.lists("points"))
                    .map(point -> new FacePoint(point[0], point[1], point[2]))
                    .toList();
        }
        try {
            return face(Files.readAllLines(args.file("points_csv")));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + args.text("points_csv"), e);
        }
    }

    /** Points from a table whose columns are named x..., y..., and height... or z...; other columns are left alone. */
    private static List<FacePoint> face(List<String> lines) {
        List<String> heads = List.of(lines.getFirst().split(",", -1));
        int x = column(heads, "x");
        int y = column(heads, "y");
        int z = column(heads, "height", "z");
        List<FacePoint> points = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            if (!line.isBlank()) {
                List<String> cells = List.of(line.split(",", -1));
                points.add(new FacePoint(number(cells, x), number(cells, y), number(cells, z)));
            }
        }
        return points;
    }

    private static double number(List<String> cells, int index) {
        return Double.parseDouble(cells.get(index).strip());
    }

    private static int column(List<String> heads, String... starts) {
        for (int i = 0; i < heads.size(); i++) {
            String head = heads.get(i).strip().toLowerCase(Locale.ROOT);
            if (Arrays.stream(starts).anyMatch(head::startsWith)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no column " + String.join(" or ", starts));
    }
}
