package gudgeon.app.desk;

import gudgeon.core.engine.Feature;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.InstrumentKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a feature is to be read, as its file says. A place is written as its words parted by commas: which one, where several
 * are alike, then depth or line or point, then direction.
 *
 * @param feature the feature
 */
public record FeaturePlaces(Feature feature) {
    private static final String EACH = "each";
    private static final Pattern COORDINATES = Pattern.compile(
            "x?\\s*(-?[0-9]+(?:\\.[0-9]+)?)\\s*(?:mm)?\\s*[,;/ ]\\s*y?\\s*(-?[0-9]+(?:\\.[0-9]+)?)\\s*(?:mm)?");

    /** What several alike are called: guide, journal, ring; empty when there is one. */
    public Optional<String> which() {
        return Optional.ofNullable(feature.take().get(EACH)).map(words -> String.join(" ", words));
    }

    /** Every place that the file names, without which one. */
    public List<String> all() {
        List<String> places = List.of("");
        for (Map.Entry<String, List<String>> take : feature.take().entrySet()) {
            if (!take.getKey().equals(EACH)) {
                places = times(places, expanded(take.getValue()));
            }
        }
        return places.equals(List.of("")) ? List.of("as it is") : places;
    }

    private static List<String> times(List<String> places, List<String> words) {
        List<String> all = new ArrayList<>();
        for (String place : places) {
            for (String word : words) {
                all.add(place.isEmpty() ? word : place + ", " + word);
            }
        }
        return all;
    }

    /** "two at right angles", "four" directions: written out. */
    private static List<String> expanded(List<String> words) {
        List<String> expanded = new ArrayList<>();
        for (String word : words) {
            switch (word) {
                case "two at right angles" -> expanded.addAll(List.of("0°", "90°"));
                case "four" -> expanded.addAll(List.of("0°", "45°", "90°", "135°"));
                case "both diagonals" ->
                    expanded.addAll(List.of("diagonal from front left", "diagonal from front right"));
                default -> expanded.add(word);
            }
        }
        return expanded;
    }

    /** Which one a place is of; empty when there is only one. */
    public String round(String place) {
        return which().isPresent() && place.contains(", ") ? place.substring(0, place.indexOf(", ")) : "";
    }

    /** The words of a place without which one it is of. */
    public List<String> words(String place) {
        String round = round(place);
        return List.of((round.isEmpty() ? place : place.substring(round.length() + 2)).split(", ", -1));
    }

    /** Coordinates of a place written as "x 120, y 40"; empty for one in words. */
    public static Optional<double[]> coordinates(String place) {
        Matcher matcher = COORDINATES.matcher(place.strip().toLowerCase(Locale.ROOT));
        return matcher.matches()
                ? Optional.of(new double[] {Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))})
                : Optional.empty();
    }

    /** Whether it is a hole: worn where it is largest. */
    public boolean isBore() {
        return feature.kind().contains("bore") && !feature.kind().contains("clearance");
    }

    /** Whether it is a shaft: worn where it is smallest. */
    public boolean isShaft() {
        return feature.kind().contains("diameter") && !isBore();
    }

    /** Whether it is read as a length at all. */
    public boolean isLength() {
        return !feature.kind().contains("volume");
    }

    /** What is read of it. */
    public Derived.Trait trait() {
        return switch (feature.kind()) {
            case "flatness" -> Derived.Trait.FLATNESS;
            case "run-out" -> Derived.Trait.RUN_OUT;
            case "gap" -> Derived.Trait.GAP;
            case "clearance", "oil clearance", "end float", "play", "backlash" -> Derived.Trait.CLEARANCE;
            case "length", "height", "lobe height" -> Derived.Trait.HEIGHT;
            default -> Derived.Trait.SIZE;
        };
    }

    /** What it is usually read with. */
    public InstrumentKind usual() {
        if (isBore()) {
            return InstrumentKind.BORE_GAUGE;
        }
        return switch (feature.kind()) {
            case "flatness", "gap", "clearance" -> InstrumentKind.FEELERS;
            case "oil clearance" -> InstrumentKind.PLASTIC_THREAD;
            case "run-out", "end float", "play", "backlash" -> InstrumentKind.DIAL;
            case "protrusion", "recess" -> InstrumentKind.DEPTH_GAUGE;
            case "length", "width", "height" -> InstrumentKind.CALIPER;
            default -> InstrumentKind.MICROMETER;
        };
    }
}
