package gudgeon.app.format;

import gudgeon.core.planning.BuildPlan;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The catalogue of cautions that engine files name by id; it comes with the program. */
public final class Cautions {
    private static final String RESOURCE = "/gudgeon/cautions.yaml";

    private final Map<String, Caution> byId;

    private Cautions(Map<String, Caution> byId) {
        this.byId = Collections.unmodifiableMap(byId);
    }

    /** The catalogue of this program, read once. */
    public static Cautions catalogue() {
        return Shipped.CATALOGUE;
    }

    /** The caution of this id, or empty when the catalogue has none. */
    public Optional<Caution> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The caution of this id.
     *
     * @throws IllegalArgumentException when the catalogue has none
     */
    public Caution caution(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no caution is called " + id));
    }

    /** Every caution, in catalogue order. */
    public List<Caution> all() {
        return List.copyOf(byId.values());
    }

    /** Every id, in catalogue order. */
    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }

    /** The cautions of these ids, danger first, each once, otherwise in the given order; unknown ids are left out. */
    public List<Caution> ranked(List<String> ids) {
        List<Caution> found = new ArrayList<>();
        for (Caution.Level level : Caution.Level.values()) {
            ids.stream()
                    .distinct()
                    .flatMap(id -> find(id).stream())
                    .filter(caution -> caution.level() == level)
                    .forEach(found::add);
        }
        return List.copyOf(found);
    }

    /**
     * The ids of a step of the way back, without those that are about taking apart only; unknown ids stay. What is filled, bled
     * or checked tells all it has: the engine is run hot for it, old oil and old gaskets are met again.
     */
    public List<String> puttingTogether(BuildPlan.Kind step, List<String> ids) {
        return switch (step) {
            case FILL, BLEED, CHECK -> ids;
            case SEAL, PLACE, SNUG, TIGHTEN, STAGE, ANGLE, RESTORE, WAIT -> withoutTakingApart(ids);
        };
    }

    private List<String> withoutTakingApart(List<String> ids) {
        return ids.stream()
                .filter(id -> find(id)
                        .map(caution -> caution.when() == Caution.When.ALWAYS)
                        .orElse(true))
                .toList();
    }

    private static Cautions read() {
        try (InputStream bytes = Cautions.class.getResourceAsStream(RESOURCE)) {
            if (bytes == null) {
                throw new IllegalStateException("the program was built without its cautions, " + RESOURCE);
            }
            Object document = new Load(LoadSettings.builder()
                            .setLabel("cautions.yaml")
                            .setAllowDuplicateKeys(false)
                            .build())
                    .loadFromInputStream(bytes);
            Map<String, Caution> byId = new LinkedHashMap<>();
            for (Map.Entry<?, ?> entry : mapping("the catalogue", document).entrySet()) {
                String id = String.valueOf(entry.getKey());
                byId.put(id, caution(id, mapping(id, entry.getValue())));
            }
            return new Cautions(byId);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + RESOURCE, e);
        }
    }

    private static Caution caution(String id, Map<?, ?> entry) {
        return new Caution(
                id,
                text(id, entry, "title"),
                text(id, entry, "text"),
                oneOf(Caution.Level.values(), Caution.Level::word, text(id, entry, "level")),
                oneOf(Caution.Basis.values(), Caution.Basis::word, text(id, entry, "basis")),
                entry.containsKey("when")
                        ? oneOf(Caution.When.values(), Caution.When::word, text(id, entry, "when"))
                        : Caution.When.ALWAYS);
    }

    private static Map<?, ?> mapping(String what, @Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return map;
        }
        throw new IllegalStateException(what + " is no mapping in " + RESOURCE);
    }

    private static String text(String id, Map<?, ?> entry, String key) {
        if (entry.get(key) instanceof String text) {
            return text;
        }
        throw new IllegalStateException("the caution " + id + " has no " + key + " in " + RESOURCE);
    }

    private static <T> T oneOf(T[] all, Function<T, String> word, String wanted) {
        return Arrays.stream(all)
                .filter(value -> word.apply(value).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("unknown word " + wanted + " in " + RESOURCE));
    }

    /** Read when first asked for. */
    private static final class Shipped {
        private static final Cautions CATALOGUE = read();
    }
}
