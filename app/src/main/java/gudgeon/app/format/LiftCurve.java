package gudgeon.app.format;

import gudgeon.core.geometry.PistonToValve.Lift;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A lift curve in a file: a line for each reading, crank degrees, a comma, the lift in mm; lines of words are passed over. */
public final class LiftCurve {
    private static final int MOST = 4_000;

    private LiftCurve() {}

    /**
     * Reads the curve.
     *
     * @throws IllegalArgumentException naming the line that cannot be read
     */
    public static List<Lift> of(Path file) {
        List<String> lines;
        try {
            lines = Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
        List<Lift> curve = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.isEmpty() || Character.isLetter(line.charAt(0)) || line.startsWith("#")) {
                continue;
            }
            curve.add(lift(file + ", line " + (i + 1), line));
        }
        if (curve.size() > MOST) {
            throw new IllegalArgumentException(file + " has " + curve.size() + " readings; " + MOST + " are enough.");
        }
        return curve;
    }

    private static Lift lift(String place, String line) {
        String[] cells = line.split("[,;\t]", -1);
        try {
            if (cells.length == 2) {
                return new Lift(Double.parseDouble(cells[0].strip()), Double.parseDouble(cells[1].strip()));
            }
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    place + ": " + Wording.shown(line) + " cannot be read; write 12, 3.45", e);
        }
        throw new IllegalArgumentException(place + ": " + Wording.shown(line) + " cannot be read; write 12, 3.45");
    }
}
