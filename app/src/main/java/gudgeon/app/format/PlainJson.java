package gudgeon.app.format;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * Records, lists and maps as JSON: keys are the names of their components with underscores, enumerations are words with
 * blanks, times as in ISO 8601. The same value gives the same text.
 */
public final class PlainJson {
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .changeDefaultVisibility(visibility -> visibility
                    .withGetterVisibility(Visibility.NONE)
                    .withIsGetterVisibility(Visibility.NONE)
                    .withFieldVisibility(Visibility.ANY))
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .addModule(new SimpleModule().addSerializer(new WordSerializer()))
            .build()
            .writer()
            .with(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private PlainJson() {}

    /** One JSON document, indented, ending with a line feed. */
    public static String text(Object value) {
        return WRITER.writeValueAsString(value) + "\n";
    }

    @SuppressWarnings("rawtypes") // the library asks for the raw type of all enumerations
    private static final class WordSerializer extends ValueSerializer<Enum> {
        @Override
        public Class<Enum> handledType() {
            return Enum.class;
        }

        @Override
        public void serialize(Enum value, JsonGenerator out, SerializationContext context) {
            out.writeString(value.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
    }
}
