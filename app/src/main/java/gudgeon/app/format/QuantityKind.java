package gudgeon.app.format;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import tech.units.indriya.unit.Units;

/** The kinds of quantity that are read, each with the unit that the program holds it in. */
public enum QuantityKind {
    /** Held in mm. */
    LENGTH("a length", "12 mm", MetricPrefix.MILLI(Units.METRE)),
    /** Held in kg. */
    MASS("a mass", "3 kg", Units.KILOGRAM),
    /** Held in N·m. */
    TORQUE("a torque", "24 N·m", UnitWords.NEWTON_METRE),
    /** Held in litres. */
    VOLUME("a volume", "0.6 l", Units.LITRE),
    /** Held in s. */
    TIME("a time", "12 min", Units.SECOND),
    /** Held in degrees. */
    ANGLE("an angle", "90 °", UnitWords.DEGREE),
    /** Held in per cent. */
    SHARE("a share", "10 %", Units.PERCENT),
    /** Held in °C. */
    TEMPERATURE("a temperature", "20 °C", Units.CELSIUS),
    /** Held in kPa. */
    PRESSURE("a pressure", "2 bar", MetricPrefix.KILO(Units.PASCAL)),
    /** Held in N. */
    FORCE("a force", "800 N", Units.NEWTON),
    /** Held in kW. */
    POWER("a power", "40 kW", MetricPrefix.KILO(Units.WATT));

    private final String words;
    private final String example;
    private final Unit<?> unit;

    QuantityKind(String words, String example, Unit<?> unit) {
        this.words = words;
        this.example = example;
        this.unit = unit;
    }

    /** With its article: "a length". */
    String words() {
        return words;
    }

    /** How one is written. */
    String example() {
        return example;
    }

    /** The unit that values are held in. */
    Unit<?> unit() {
        return unit;
    }
}
