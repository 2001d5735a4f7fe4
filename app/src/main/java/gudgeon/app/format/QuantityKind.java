package gudgeon.app.format;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import tech.units.indriya.unit.Units;

/** The kinds of quantity that stand in engine files, each with the unit that the program holds it in. */
enum QuantityKind {
    LENGTH("a length", "12 mm", MetricPrefix.MILLI(Units.METRE)),
    MASS("a mass", "3 kg", Units.KILOGRAM),
    TORQUE("a torque", "24 N·m", UnitWords.NEWTON_METRE),
    VOLUME("a volume", "0.6 l", Units.LITRE),
    TIME("a time", "12 min", Units.SECOND),
    ANGLE("an angle", "90 °", UnitWords.DEGREE),
    SHARE("a share", "10 %", Units.PERCENT),
    TEMPERATURE("a temperature", "20 °C", Units.CELSIUS),
    PRESSURE("a pressure", "2 bar", MetricPrefix.KILO(Units.PASCAL)),
    FORCE("a force", "800 N", Units.NEWTON),
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
