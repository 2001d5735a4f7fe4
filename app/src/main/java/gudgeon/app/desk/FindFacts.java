package gudgeon.app.desk;

import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Engine;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What an engine file says of its engine as far as it matters for finding faults, in the keys of a case. */
final class FindFacts {
    private static final Pattern LENGTH = Pattern.compile("([0-9.]+)\\s*(mm|cm|in|\")");

    private FindFacts() {}

    static Map<String, String> of(Engine engine) {
        Map<String, String> facts = new LinkedHashMap<>();
        Map<String, String> written = engine.identity().facts();
        String cycle = written.getOrDefault("cycle", "").toLowerCase(Locale.ROOT);
        if (!cycle.isEmpty()) {
            facts.put("fuel", cycle.contains("diesel") ? "diesel" : "petrol");
        }
        facts.put("turbo", String.valueOf(cycle.contains("turbo")));
        if (cycle.contains("common rail")) {
            facts.put("fuelling", "common rail");
        }
        int cylinders = engine.identity().cylinders();
        facts.put("cylinders", String.valueOf(cylinders));
        Optional<Double> bore = millimetres(written.getOrDefault("bore", ""));
        Optional<Double> stroke = millimetres(written.getOrDefault("stroke", ""));
        if (bore.isPresent() && stroke.isPresent()) {
            double cc = Math.PI / 4 * bore.get() * bore.get() * stroke.get() * cylinders / 1000;
            facts.put("cc", String.format(Locale.ROOT, "%.1f", cc));
        }
        if (written.containsKey("firing")) {
            facts.put("firing", written.getOrDefault("firing", ""));
        }
        boolean liquid = engine.circuits().stream().anyMatch(circuit -> circuit.kind() == CircuitKind.COOLANT);
        facts.put("cooling", liquid ? "liquid" : "air");
        return facts;
    }

    private static Optional<Double> millimetres(String typed) {
        Matcher matcher = LENGTH.matcher(typed);
        if (!matcher.lookingAt()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        return Optional.of(switch (matcher.group(2)) {
            case "mm" -> value;
            case "cm" -> value * 10;
            default -> value * 25.4;
        });
    }
}
