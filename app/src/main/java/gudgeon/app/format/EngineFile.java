package gudgeon.app.format;

import java.nio.file.Path;

/** Reads an engine file. The format is described in docs/engine-file.md. */
public final class EngineFile {
    private EngineFile() {}

    /** Reads a file. A file that is missing or cannot be read is a {@link Reading.Faulty}, never an exception. */
    public static Reading read(Path file) {
        throw new UnsupportedOperationException("being written: " + file);
    }

    /**
     * Reads the bytes of a file.
     *
     * @param fileName what the problems call the file
     */
    public static Reading read(String fileName, byte[] bytes) {
        throw new UnsupportedOperationException("being written: " + fileName + ", " + bytes.length + " bytes");
    }
}
