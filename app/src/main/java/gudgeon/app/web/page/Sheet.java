package gudgeon.app.web.page;

import java.util.ArrayList;
import java.util.List;

/**
 * The frame of one page: what stands in its head and in the title block at its foot.
 *
 * @param title of the page; the browser's tab says it too
 * @param subject what the page belongs to: an engine, a job
 * @param mark a few words at the right of the head: "step 14 of 61"; may be empty
 * @param section the entry of the menu that the page belongs to
 * @param stage where the job stands; {@link Stage#NONE} on pages that belong to no job
 * @param block cells of the title block
 * @param bench whether it is read at arm's length: larger text, no menu, no stage line
 */
public record Sheet(
        String title, Link subject, String mark, Section section, Stage stage, List<Cell> block, boolean bench) {
    public Sheet {
        block = List.copyOf(block);
    }

    /**
     * @param text what is shown
     * @param href where it leads; empty for text alone
     */
    public record Link(String text, String href) {}

    /** One cell of the title block. */
    public record Cell(String label, String text) {}

    /** Entries of the menu. */
    public enum Section {
        JOBS("Jobs", "/"),
        ENGINES("Engines", "/engines"),
        SUMS("Sums", "/sums"),
        NONE("", "");

        private final String label;
        private final String href;

        Section(String label, String href) {
            this.label = label;
            this.href = href;
        }

        public String label() {
            return label;
        }

        public String href() {
            return href;
        }

        /** What the menu shows. */
        public static List<Section> menu() {
            return List.of(JOBS, ENGINES, SUMS);
        }
    }

    /** The eight stages of a rebuild. */
    public enum Stage {
        FIND("Find"),
        STRIP("Strip"),
        CLEAN("Clean"),
        MEASURE("Measure"),
        DECIDE("Decide"),
        ORDER("Order"),
        BUILD("Build"),
        PROVE("Prove"),
        NONE("");

        private final String label;

        Stage(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }

        /** The eight, in order. */
        public static List<Stage> line() {
            return List.of(FIND, STRIP, CLEAN, MEASURE, DECIDE, ORDER, BUILD, PROVE);
        }
    }

    /** A page that belongs to nothing in particular. */
    public static Sheet of(Section section, String title) {
        return new Sheet(title, new Link("Gudgeon", "/"), "", section, Stage.NONE, List.of(), false);
    }

    /** Belonging to an engine or a job. */
    public Sheet about(String text, String href) {
        return new Sheet(title, new Link(text, href), mark, section, stage, block, bench);
    }

    public Sheet marked(String text) {
        return new Sheet(title, subject, text, section, stage, block, bench);
    }

    public Sheet at(Stage now) {
        return new Sheet(title, subject, mark, section, now, block, bench);
    }

    /** With one more cell in the title block. */
    public Sheet with(String label, String text) {
        List<Cell> cells = new ArrayList<>(block);
        cells.add(new Cell(label, text));
        return new Sheet(title, subject, mark, section, stage, cells, bench);
    }

    /** To be read at arm's length. */
    public Sheet forBench() {
        return new Sheet(title, subject, mark, section, stage, block, true);
    }
}
