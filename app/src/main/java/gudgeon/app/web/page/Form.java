package gudgeon.app.web.page;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;

/**
 * What was typed into a form, and what is wrong with it. Reading a field checks it; a fault is kept beside what was typed, so
 * that the form can be shown again as it was.
 */
public final class Form {
    /** Field that names the entry that a form makes: sent twice, it is written once. */
    public static final String ENTRY = "entry";

    /** Most characters of a line. */
    public static final int LINE = 200;

    /** Most characters of a longer text. */
    public static final int TEXT = 5_000;

    private final Map<String, String> typed = new LinkedHashMap<>();
    private final Map<String, List<String>> chosen = new LinkedHashMap<>();
    private final Map<String, String> faults = new LinkedHashMap<>();

    private Form() {}

    /** An empty form. */
    public static Form empty() {
        return new Form();
    }

    /** The form that was sent. */
    public static Form of(Context request) {
        Form form = new Form();
        request.formParamMap().forEach((name, values) -> {
            if (!values.isEmpty()) {
                form.typed.put(name, values.getFirst());
                form.chosen.put(name, List.copyOf(values));
            }
        });
        return form;
    }

    /** Starts a form with a value. */
    public Form with(String name, String value) {
        typed.put(name, value);
        return this;
    }

    /** What was typed, as it was; empty when nothing was. */
    public String typed(String name) {
        return typed.getOrDefault(name, "");
    }

    /** All values of a field that may be ticked more than once, those that fit a line; at most as many. */
    public List<String> lines(String name, int most) {
        return chosen.getOrDefault(name, List.of()).stream()
                .filter(value -> !value.isBlank() && value.length() <= LINE)
                .limit(most)
                .toList();
    }

    /** What is wrong with a field; empty when nothing is. */
    public String fault(String name) {
        return faults.getOrDefault(name, "");
    }

    /** Notes that something is wrong with a field. The first fault of a field stays. */
    public Form refuse(String name, String fault) {
        faults.putIfAbsent(name, fault);
        return this;
    }

    /** Whether nothing is wrong so far. */
    public boolean sound() {
        return faults.isEmpty();
    }

    /** All faults, in order. */
    public List<String> faults() {
        return new ArrayList<>(faults.values());
    }

    /** A line that must be there. */
    public String line(String name, String what) {
        String text = optionalLine(name, what);
        if (text.isEmpty()) {
            refuse(name, capital(what) + " is missing.");
        }
        return text;
    }

    /** A line that may be empty. */
    public String optionalLine(String name, String what) {
        return limited(name, what, LINE).replaceAll("\\s+", " ").strip();
    }

    /** A text of several lines that may be empty. */
    public String text(String name, String what) {
        return limited(name, what, TEXT).strip();
    }

    /** A whole number between two bounds; empty when it is not there or wrong, which is then noted. */
    public OptionalInt whole(String name, String what, int least, int most) {
        String text = typed(name).strip();
        if (text.matches("[0-9]{1,9}")) {
            int value = Integer.parseInt(text);
            if (value >= least && value <= most) {
                return OptionalInt.of(value);
            }
        }
        refuse(name, capital(what) + " is a whole number from " + least + " to " + most + ".");
        return OptionalInt.empty();
    }

    /** A number; empty when the field is empty. A decimal comma counts as a point. */
    public OptionalDouble number(String name, String what, double least, double most) {
        String text = typed(name).strip().replace(',', '.');
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (text.matches("-?[0-9]{1,9}(\\.[0-9]{1,9})?")) {
            double value = Double.parseDouble(text);
            if (value >= least && value <= most) {
                return OptionalDouble.of(value);
            }
        }
        refuse(name, capital(what) + " is a number from " + plain(least) + " to " + plain(most) + ".");
        return OptionalDouble.empty();
    }

    /** Whether a box is ticked. */
    public boolean ticked(String name) {
        return !typed(name).isEmpty();
    }

    /** One of several words; empty when it is none of them, which is then noted. */
    public Optional<String> oneOf(String name, String what, List<String> words) {
        String word = typed(name);
        if (words.contains(word)) {
            return Optional.of(word);
        }
        refuse(name, "Choose " + what + ".");
        return Optional.empty();
    }

    /** The id of an entry, as an address or a form names it; empty when it cannot be one. */
    public static Optional<UUID> findId(String text) {
        return text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}") ? Optional.of(UUID.fromString(text)) : Optional.empty();
    }

    /**
     * The name of the entry that this form makes.
     *
     * @throws Refusal when the form carries none
     */
    public UUID entry() {
        String text = typed(ENTRY);
        if (!text.matches("[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}")) {
            throw Refusal.wrong(
                    "This form has lost its entry number. Nothing was changed.", "Load the page again and send it again.");
        }
        return UUID.fromString(text);
    }

    private String limited(String name, String what, int most) {
        String text = typed(name);
        if (text.length() > most) {
            refuse(name, capital(what) + " has " + text.length() + " characters; at most " + most + " fit.");
            return "";
        }
        return text;
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
