package gudgeon.app.format;

/**
 * A caution that stands in a step, before the action. It never replaces the manual, local rules or licensed practice.
 *
 * @param id ASCII, as engine files name it
 * @param title the caution in a few words
 * @param text what to do about it, in the imperative; at most about 200 characters
 * @param level how grave it is
 * @param basis what stands behind it
 * @param when the work that it is about
 */
public record Caution(String id, String title, String text, Level level, Basis basis, When when) {
    public Caution {
        if (title.isBlank() || text.isBlank()) {
            throw new IllegalArgumentException("the caution " + id + " needs a title and a text");
        }
    }

    /** How grave a caution is. */
    public enum Level {
        /** To life or limb, or a loss that cannot be undone. */
        DANGER("danger"),
        /** Everything else. */
        CAUTION("caution");

        private final String word;

        Level(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** What stands behind a caution. */
    public enum Basis {
        /** A public source, named in docs/sources.md. */
        READ("read"),
        /** Known in the trade, without a source at hand. */
        COMMON_PRACTICE("common practice");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The work that a caution is about. */
    public enum When {
        /** Taking apart and putting together. */
        ALWAYS("always"),
        /** Taking apart only: what is stuck, under pressure, hot or full. */
        TAKING_APART("taking apart");

        private final String word;

        When(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
