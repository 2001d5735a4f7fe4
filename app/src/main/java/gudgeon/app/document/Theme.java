package gudgeon.app.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The colours of a drawing, as named tokens. Meaning is never carried by colour alone. */
public enum Theme {
    /** Ink on workshop paper. */
    PAPER("f5f0e4", "fbf8f0", "1c2430", "5b6270", "cfc5b0", "17427c", "e3eaf3"),
    /** For the lamp at night. */
    DARK("12151a", "191e25", "ece7da", "a3a9b3", "3a414c", "8db8f2", "1d2c42"),
    /** For sunlight: white and black, no washes. */
    SUN("ffffff", "ffffff", "000000", "000000", "000000", "00306b", "ffffff"),
    /** For print: white paper, ink. */
    PRINT("ffffff", "ffffff", "1c2430", "4a5160", "b9b4a8", "17427c", "e3eaf3"),
    /** The page around the drawing sets the tokens. */
    INHERIT();

    private final Map<String, String> tokens;

    Theme(String... colours) {
        String[] names = {"paper", "sheet", "ink", "soft", "rule", "blue", "bluewash"};
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < colours.length; i++) {
            map.put(names[i], "#" + colours[i]);
        }
        this.tokens = Collections.unmodifiableMap(map);
    }

    /** Token name to colour; empty for {@link #INHERIT}. */
    public Map<String, String> tokens() {
        return tokens;
    }

    /** "--paper:#f5f0e4;--sheet:..." */
    String declarations() {
        StringBuilder css = new StringBuilder();
        tokens.forEach((name, colour) ->
                css.append("--").append(name).append(':').append(colour).append(';'));
        return css.toString();
    }
}
