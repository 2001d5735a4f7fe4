package gudgeon.app.format;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import gudgeon.core.book.Body;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Word;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Entries of a book as JSON, one object each: in the store, in exports, and between devices. The kind of a body is its
 * record's name in words ({@code OperationDone} is "operation done"). Keys: docs/json.md.
 */
public final class EntryJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .changeDefaultVisibility(visibility -> visibility
                    .withGetterVisibility(Visibility.NONE)
                    .withIsGetterVisibility(Visibility.NONE)
                    .withFieldVisibility(Visibility.ANY))
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private static final Map<String, Class<? extends Body>> KINDS = kinds();

    private EntryJson() {}

    /** An entry cannot be read: what is wrong with it. */
    public static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;

        Unreadable(String what, Throwable cause) {
            super(what, cause);
        }
    }

    /** All kinds of body, in the order of their families. */
    public static List<String> allKinds() {
        return List.copyOf(KINDS.keySet());
    }

    /** The record of a kind; empty when there is none of that name. */
    public static Optional<Class<? extends Body>> findKind(String kind) {
        return Optional.ofNullable(KINDS.get(kind));
    }

    /** The kind of a body in words. */
    public static String kind(Body body) {
        return body instanceof Word.Newer newer ? newer.type() : word(body.getClass());
    }

    /** One line of JSON, the same for the same entry. */
    public static String write(Entry entry) {
        return MAPPER.writeValueAsString(node(entry));
    }

    /** The entry as a node, for documents that hold it. */
    static ObjectNode node(Entry entry) {
        ObjectNode node = JsonPieces.object()
                .put("id", entry.id().toString())
                .put("schema", entry.schema())
                .put("job", entry.job())
                .put("seq", entry.seq())
                .put("at", entry.stamp().at().toString())
                .put("by", entry.stamp().by())
                .put("device", entry.stamp().device())
                .put("session", entry.stamp().session());
        node.set("about", MAPPER.valueToTree(entry.about()));
        JsonPieces.putText(
                node, "replaces", entry.replaces().map(UUID::toString).orElse(""));
        node.put("type", kind(entry.body()));
        node.set("body", body(entry.body()));
        return node;
    }

    private static JsonNode body(Body body) {
        return body instanceof Word.Newer newer ? MAPPER.readTree(newer.json()) : MAPPER.valueToTree(body);
    }

    /**
     * Reads one entry. A body of an unknown kind, or of a later schema that does not fit, is kept as {@link Word.Newer}.
     *
     * @throws Unreadable when it is damaged
     */
    public static Entry read(String json) {
        try {
            JsonNode node = MAPPER.readTree(json);
            int schema = node.required("schema").asInt();
            List<Ref> about = new ArrayList<>();
            for (JsonNode ref : node.required("about")) {
                about.add(MAPPER.treeToValue(ref, Ref.class));
            }
            JsonNode replaces = node.path("replaces");
            return new Entry(
                    UUID.fromString(node.required("id").asString()),
                    schema,
                    node.required("job").asString(),
                    node.required("seq").asLong(),
                    new Entry.Stamp(
                            OffsetDateTime.parse(node.required("at").asString()),
                            node.required("by").asString(),
                            node.required("device").asString(),
                            node.required("session").asString()),
                    about,
                    replaces.isString() ? Optional.of(UUID.fromString(replaces.asString())) : Optional.empty(),
                    body(schema, node.required("type").asString(), node.required("body")));
        } catch (JacksonException | IllegalArgumentException | DateTimeParseException e) {
            throw new Unreadable("an entry cannot be read: " + Wording.firstLine(String.valueOf(e.getMessage())), e);
        }
    }

    private static Body body(int schema, String type, JsonNode body) {
        Class<? extends Body> kind = KINDS.get(type);
        if (kind == null) {
            return new Word.Newer(type, body.toString());
        }
        try {
            return MAPPER.treeToValue(body, kind);
        } catch (JacksonException e) {
            if (schema > Entry.SCHEMA) {
                return new Word.Newer(type, body.toString());
            }
            throw e;
        }
    }

    private static Map<String, Class<? extends Body>> kinds() {
        Map<String, Class<? extends Body>> kinds = new LinkedHashMap<>();
        for (Class<?> family : Body.class.getPermittedSubclasses()) {
            for (Class<?> kind : family.getPermittedSubclasses()) {
                if (kind != Word.Newer.class) {
                    kinds.put(word(kind), kind.asSubclass(Body.class));
                }
            }
        }
        return Collections.unmodifiableMap(kinds);
    }

    private static String word(Class<?> kind) {
        return kind.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
