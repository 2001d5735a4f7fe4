package gudgeon.core.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is left above the piston at top dead centre, as it is measured on the bench: the chamber by burette, the gasket by
 * its compressed thickness and hole, the deck by depth gauge, the piston's dish by burette.
 *
 * @param cylinder bore and stroke
 * @param chamber_cm3 volume of the chamber in the head, valves and plug in place, in cm³, 0 or more
 * @param gasket_thickness_mm thickness of the gasket when compressed, in mm, 0 or more
 * @param gasket_d_mm diameter of the gasket's hole, in mm, above 0
 * @param deck_clearance_mm how far the piston stays below the block's face at top dead centre, in mm; negative when it stands
 *     proud
 * @param piston_dish_cm3 volume of dish and valve pockets, in cm³; negative for a dome
 */
public record CombustionSpace(
        Cylinder cylinder,
        double chamber_cm3,
        double gasket_thickness_mm,
        double gasket_d_mm,
        double deck_clearance_mm,
        double piston_dish_cm3) {
    public CombustionSpace {
        Guard.notNegative("The chamber", chamber_cm3, "cm³");
        Guard.notNegative("The gasket's thickness", gasket_thickness_mm, "mm");
        Guard.positive("The gasket's hole", gasket_d_mm, "mm");
        Guard.finite("The deck clearance", deck_clearance_mm, "mm");
        Guard.finite("The piston's dish", piston_dish_cm3, "cm³");
        double clearance = chamber_cm3
                + Math.PI / 4 * gasket_d_mm * gasket_d_mm * gasket_thickness_mm / 1000
                + cylinder.area_mm2() * deck_clearance_mm / 1000
                + piston_dish_cm3;
        if (!(clearance > 0)) {
            throw new IllegalArgumentException("Above the piston " + clearance
                    + " cm³ would be left; it must be more than 0. Maybe the dome or the deck has the wrong sign.");
        }
    }

    /** Volume in the gasket's hole in cm³. */
    public double gasket_cm3() {
        return Math.PI / 4 * gasket_d_mm * gasket_d_mm * gasket_thickness_mm / 1000;
    }

    /** Volume between the piston's edge and the block's face in cm³; negative when the piston stands proud. */
    public double deck_cm3() {
        return cylinder.area_mm2() * deck_clearance_mm / 1000;
    }

    /** All that is left above the piston at top dead centre, in cm³. */
    public double clearance_cm3() {
        return chamber_cm3 + gasket_cm3() + deck_cm3() + piston_dish_cm3;
    }

    /** Compression ratio: (swept + left) / left. */
    public double compressionRatio() {
        return 1 + cylinder.swept_cm3() / clearance_cm3();
    }

    /**
     * Squish: the gap between the piston's flat and the head's flat at top dead centre, cold and without play, in mm: gasket
     * plus deck. Running, bearings, rod and heat take up some of it.
     */
    public double squish_mm() {
        return gasket_thickness_mm + deck_clearance_mm;
    }

    /** With another gasket. */
    public CombustionSpace withGasket(double thickness_mm, double hole_mm) {
        return new CombustionSpace(cylinder, chamber_cm3, thickness_mm, hole_mm, deck_clearance_mm, piston_dish_cm3);
    }

    /**
     * With the head skimmed by a depth.
     *
     * @param depth_mm what comes off, in mm, 0 or more
     * @param openArea_mm2 the chamber's mouth in the head's face, in mm²; the volume lost is this times the depth, for a
     *     chamber whose walls stand square to the face
     */
    public CombustionSpace withHeadSkimmed(double depth_mm, double openArea_mm2) {
        Guard.notNegative("The skim", depth_mm, "mm");
        Guard.positive("The chamber's mouth", openArea_mm2, "mm²");
        return new CombustionSpace(
                cylinder,
                chamber_cm3 - openArea_mm2 * depth_mm / 1000,
                gasket_thickness_mm,
                gasket_d_mm,
                deck_clearance_mm,
                piston_dish_cm3);
    }

    /** With the block's face skimmed by a depth in mm. */
    public CombustionSpace withBlockSkimmed(double depth_mm) {
        Guard.notNegative("The skim", depth_mm, "mm");
        return new CombustionSpace(
                cylinder, chamber_cm3, gasket_thickness_mm, gasket_d_mm, deck_clearance_mm - depth_mm, piston_dish_cm3);
    }

    /** Bored out to another diameter in mm, the piston's dish or dome unchanged. */
    public CombustionSpace withBore(double bore_mm) {
        return new CombustionSpace(
                cylinder.withBore(bore_mm),
                chamber_cm3,
                gasket_thickness_mm,
                Math.max(gasket_d_mm, bore_mm),
                deck_clearance_mm,
                piston_dish_cm3);
    }

    /**
     * The compression ratio after the height above the piston changes.
     *
     * @param swept_cm3 swept volume, above 0
     * @param ratio compression ratio before, above 1
     * @param change_mm change of height, negative for a skim or a thinner gasket
     * @param area_mm2 over which area, above 0
     */
    public static double ratioAfter(double swept_cm3, double ratio, double change_mm, double area_mm2) {
        Guard.positive("The swept volume", swept_cm3, "cm³");
        Guard.positive("The compression ratio less one", ratio - 1, "");
        Guard.finite("The change of height", change_mm, "mm");
        Guard.positive("The area", area_mm2, "mm²");
        double left_cm3 = swept_cm3 / (ratio - 1) + area_mm2 * change_mm / 1000;
        if (!(left_cm3 > 0)) {
            throw new IllegalArgumentException(
                    "Nothing would be left above the piston. Maybe the change is in hundredths of a millimetre.");
        }
        return 1 + swept_cm3 / left_cm3;
    }

    /**
     * One source of doubt about the compression ratio.
     *
     * @param of which measured value
     * @param standardUncertainty its standard uncertainty, in its own unit
     * @param contribution what it contributes to the standard uncertainty of the ratio
     */
    public record Doubt(Measured of, double standardUncertainty, double contribution) {}

    /** The measured values that a compression ratio rests on, in the order of the record. */
    public enum Measured {
        /** The bore, mm. */
        BORE,
        /** The stroke, mm. */
        STROKE,
        /** The chamber, cm³. */
        CHAMBER,
        /** The gasket's thickness, mm. */
        GASKET_THICKNESS,
        /** The gasket's hole, mm. */
        GASKET_HOLE,
        /** The deck clearance, mm. */
        DECK,
        /** The piston's dish, cm³. */
        DISH
    }

    /** Standard uncertainties of the seven measured values, each 0 or more, in the unit of its value. */
    public record Uncertainties(
            double bore_mm,
            double stroke_mm,
            double chamber_cm3,
            double gasket_thickness_mm,
            double gasket_d_mm,
            double deck_mm,
            double dish_cm3) {}

    /**
     * What each measured value contributes to the doubt about the compression ratio, largest first. Source: [GUM] 5.1.2, the
     * derivatives worked out by hand; the root of the sum of squares is the ratio's standard uncertainty.
     */
    public List<Doubt> doubts(Uncertainties of) {
        double left = clearance_cm3();
        double swept = cylinder.swept_cm3();
        double perLeft = -swept / (left * left);
        double perSwept = 1 / left;
        double perBore = Math.PI / 2 * cylinder.bore_mm() / 1000;
        double hole_mm2 = Math.PI / 4 * gasket_d_mm * gasket_d_mm;
        List<Doubt> doubts = new ArrayList<>();
        doubts.add(doubt(
                Measured.BORE,
                of.bore_mm(),
                perSwept * perBore * cylinder.stroke_mm() + perLeft * perBore * deck_clearance_mm));
        doubts.add(doubt(Measured.STROKE, of.stroke_mm(), perSwept * cylinder.area_mm2() / 1000));
        doubts.add(doubt(Measured.CHAMBER, of.chamber_cm3(), perLeft));
        doubts.add(doubt(Measured.GASKET_THICKNESS, of.gasket_thickness_mm(), perLeft * hole_mm2 / 1000));
        doubts.add(doubt(
                Measured.GASKET_HOLE, of.gasket_d_mm(), perLeft * Math.PI / 2 * gasket_d_mm * gasket_thickness_mm / 1000));
        doubts.add(doubt(Measured.DECK, of.deck_mm(), perLeft * cylinder.area_mm2() / 1000));
        doubts.add(doubt(Measured.DISH, of.dish_cm3(), perLeft));
        doubts.sort(Comparator.comparingDouble(Doubt::contribution).reversed());
        return List.copyOf(doubts);
    }

    /** The standard uncertainty of the compression ratio, the seven values independent. */
    public double standardUncertainty(Uncertainties of) {
        return Math.sqrt(doubts(of).stream()
                .mapToDouble(doubt -> doubt.contribution() * doubt.contribution())
                .sum());
    }

    private static Doubt doubt(Measured what, double uncertainty, double slope) {
        Guard.notNegative("A standard uncertainty", uncertainty, "");
        return new Doubt(what, uncertainty, Math.abs(slope) * uncertainty);
    }
}
