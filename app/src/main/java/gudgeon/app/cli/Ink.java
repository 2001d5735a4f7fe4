package gudgeon.app.cli;

/** How text stands out on a terminal; without colour every text stays as it is. Colour never carries meaning alone. */
enum Ink {
    HEAD("1"),
    STRONG("1"),
    SOFT("2"),
    DANGER("1;31"),
    CAUTION("33"),
    GOOD("32");

    private static final String ESCAPE = "\u001b[";

    private final String code;

    Ink(String code) {
        this.code = code;
    }

    String on(Screen screen, String text) {
        return screen.colour() && !text.isEmpty() ? ESCAPE + code + "m" + text + ESCAPE + "0m" : text;
    }
}
