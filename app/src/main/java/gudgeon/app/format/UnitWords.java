package gudgeon.app.format;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import tech.units.indriya.unit.Units;

/**
 * The spellings of units that are understood, and those that are asked about because they mean two things. Only the exact
 * definitions of the inch (0.0254 m) and the pound (0.45359237 kg), both of the international yard and pound agreement of
 * 1959, and of standard gravity (9.80665 m/s², third general conference on weights and measures, 1901) stand here; every
 * factor is composed from them and the SI by the units library.
 */
final class UnitWords {
    static final Unit<?> NEWTON_METRE = Units.NEWTON.multiply(Units.METRE);
    static final Unit<Angle> DEGREE = Units.RADIAN.multiply(Math.PI).divide(180);

    private static final Unit<Length> INCH = Units.METRE.multiply(0.0254);
    private static final Unit<Length> FOOT = INCH.multiply(12);
    private static final Unit<Mass> POUND = Units.KILOGRAM.multiply(0.45359237);
    private static final Unit<?> GRAVITY = Units.METRE_PER_SQUARE_SECOND.multiply(9.80665);
    private static final Unit<Force> POUND_FORCE = POUND.multiply(GRAVITY).asType(Force.class);
    private static final Unit<Force> KILOGRAM_FORCE =
            Units.KILOGRAM.multiply(GRAVITY).asType(Force.class);

    /** Conventional mercury: 13.5951 times water of 1,000 kg/m³ under standard gravity; pressure for each unit of height. */
    private static final Unit<?> MERCURY =
            Units.KILOGRAM.divide(Units.METRE.pow(3)).multiply(13_595.1).multiply(GRAVITY);

    /** The gallon of the UK, 4.54609 l exactly (weights and measures act, 1985); that of the US is 231 cubic inches. */
    private static final Unit<?> UK_GALLON = Units.LITRE.multiply(4.54609);

    private static final Map<String, Meaning> KNOWN = known();
    private static final Map<String, String> ASKED = asked();

    private UnitWords() {}

    /** A unit and what kind of quantity it measures; the kind is named, not referenced, to keep the two classes apart. */
    record Meaning(String kind, Unit<?> unit) {}

    /** The meaning of a unit's spelling; blanks, dots and hyphens inside and capitals do not matter. */
    static Optional<Meaning> find(String spelling) {
        return Optional.ofNullable(KNOWN.get(key(spelling)));
    }

    /** The question to ask back about a unit that means two things. */
    static Optional<String> question(String spelling) {
        return Optional.ofNullable(ASKED.get(key(spelling)));
    }

    static String key(String spelling) {
        return spelling.toLowerCase(Locale.ROOT)
                .replaceAll("[\\s·⋅•‧∙×*.‐‑–-]", "")
                .replace('μ', 'µ')
                .replace('″', '"')
                .replace('³', '3');
    }

    private static Map<String, Meaning> known() {
        Map<String, Meaning> map = new LinkedHashMap<>();
        put(map, "LENGTH", MetricPrefix.MILLI(Units.METRE), "mm");
        put(map, "LENGTH", MetricPrefix.CENTI(Units.METRE), "cm");
        put(map, "LENGTH", Units.METRE, "m");
        put(map, "LENGTH", MetricPrefix.MICRO(Units.METRE), "µm", "um");
        put(map, "LENGTH", INCH, "in", "inch", "\"");
        put(map, "LENGTH", INCH.divide(1000), "thou");
        put(map, "MASS", Units.KILOGRAM, "kg");
        put(map, "MASS", Units.GRAM, "g");
        put(map, "MASS", POUND, "lb", "lbs");
        put(map, "TORQUE", NEWTON_METRE, "nm");
        put(map, "TORQUE", KILOGRAM_FORCE.multiply(Units.METRE), "kgfm");
        put(map, "TORQUE", POUND_FORCE.multiply(FOOT), "lbfft", "lbft", "ftlb", "ftlbf");
        put(map, "TORQUE", POUND_FORCE.multiply(INCH), "lbfin", "lbin", "inlb", "inlbf");
        put(map, "VOLUME", Units.LITRE, "l", "litre", "litres", "dm3");
        put(map, "VOLUME", MetricPrefix.MILLI(Units.LITRE), "ml");
        put(map, "VOLUME", MetricPrefix.CENTI(Units.METRE).pow(3), "cm3", "cc");
        put(map, "VOLUME", INCH.pow(3), "in3", "cuin");
        put(map, "VOLUME", UK_GALLON.divide(8), "ukpint", "ukpt", "imperialpint");
        put(map, "VOLUME", INCH.pow(3).multiply(231).divide(8), "uspint", "uspt");
        put(map, "TIME", Units.SECOND, "s", "sec");
        put(map, "TIME", Units.MINUTE, "min");
        put(map, "TIME", Units.HOUR, "h", "hr");
        put(map, "ANGLE", DEGREE, "°", "deg");
        put(map, "SHARE", Units.PERCENT, "%");
        put(map, "TEMPERATURE", Units.CELSIUS, "°c");
        put(map, "TEMPERATURE", Units.KELVIN.multiply(5).divide(9).shift(459.67), "°f");
        put(map, "PRESSURE", MetricPrefix.KILO(Units.PASCAL), "kpa");
        put(map, "PRESSURE", MetricPrefix.KILO(Units.PASCAL).multiply(100), "bar");
        put(map, "PRESSURE", MetricPrefix.MEGA(Units.PASCAL), "mpa");
        put(map, "PRESSURE", POUND_FORCE.divide(INCH.pow(2)), "psi");
        put(map, "PRESSURE", Units.PASCAL, "pa");
        put(map, "PRESSURE", MetricPrefix.HECTO(Units.PASCAL), "hpa", "mbar");
        put(
                map,
                "PRESSURE",
                KILOGRAM_FORCE.divide(MetricPrefix.CENTI(Units.METRE).pow(2)),
                "kgf/cm2",
                "kgf/cm²");
        put(map, "PRESSURE", Units.PASCAL.multiply(101_325), "atm");
        put(map, "PRESSURE", MERCURY.multiply(MetricPrefix.MILLI(Units.METRE)), "mmhg");
        put(map, "PRESSURE", MERCURY.multiply(INCH), "inhg");
        put(map, "FORCE", Units.NEWTON, "n");
        put(map, "FORCE", MetricPrefix.KILO(Units.NEWTON), "kn");
        put(map, "FORCE", POUND_FORCE, "lbf");
        put(map, "FORCE", KILOGRAM_FORCE, "kgf");
        put(map, "POWER", Units.WATT, "w");
        put(map, "POWER", MetricPrefix.KILO(Units.WATT), "kw");
        put(map, "POWER", POUND_FORCE.multiply(FOOT).divide(Units.SECOND).multiply(550), "hp");
        return map;
    }

    private static void put(Map<String, Meaning> map, String kind, Unit<?> unit, String... spellings) {
        for (String spelling : spellings) {
            map.put(spelling, new Meaning(kind, unit));
        }
    }

    private static Map<String, String> asked() {
        Map<String, String> map = new LinkedHashMap<>();
        for (String mil : new String[] {"mil", "mils"}) {
            map.put(mil, "a thousandth of an inch (write thou) or a millimetre (write mm)?");
        }
        for (String pound : new String[] {"pound", "pounds", "#"}) {
            map.put(pound, "a mass (write lb) or a torque (write lbf·ft or lbf·in)?");
        }
        map.put("poundfeet", "write lbf·ft");
        map.put("poundinches", "write lbf·in");
        for (String kgm : new String[] {"kgm", "mkg", "kgcm"}) {
            map.put(kgm, "a torque by weight? Write kgf·m, or better N·m");
        }
        for (String measure :
                new String[] {"pint", "pints", "pt", "gal", "gallon", "gallons", "quart", "quarts", "qt", "floz"}) {
            map.put(measure, "of the UK or of the US? They differ by a fifth; write litres");
        }
        map.put("oz", "a mass (write g) or a volume (write ml)?");
        map.put("ton", "metric, UK or US? Write kg");
        map.put("t", "metric tonnes? Write kg");
        map.put("d", "days? Write hours, for instance 24 h");
        map.put("c", "a temperature? Write °C");
        map.put("f", "a temperature? Write °F");
        map.put("mn", "minutes? Write min");
        return map;
    }
}
