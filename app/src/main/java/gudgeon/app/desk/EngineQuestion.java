package gudgeon.app.desk;

import gudgeon.app.format.EngineFile;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Reading;
import gudgeon.app.format.Severity;
import gudgeon.app.format.ShippedEngines;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/**
 * Which engine is it?
 *
 * @param file path of an engine file, or the id of a shipped one
 */
public record EngineQuestion(String file) {
    /** What came of reading it; never an exception for what stands in the file or for a file that is not there. */
    public Reading ask() {
        Path path;
        try {
            path = ShippedEngines.resolve(file);
        } catch (InvalidPathException e) {
            return faulty("this is no name that a file can have", "");
        }
        if (Files.notExists(path)) {
            List<String> ids = ShippedEngines.ids();
            List<String> near = Nearest.to(file, ids);
            return faulty(
                    "there is no such file, and no shipped engine of this name",
                    (near.isEmpty() ? "shipped are " + String.join(", ", ids) : "maybe " + String.join(" or ", near)));
        }
        return EngineFile.read(path);
    }

    private Reading faulty(String what, String wouldBeRight) {
        return new Reading.Faulty(List.of(new Problem(file, 0, 0, Severity.FAULT, what, wouldBeRight)));
    }
}
