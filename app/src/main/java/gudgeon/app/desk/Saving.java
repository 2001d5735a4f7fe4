package gudgeon.app.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes what was made into files: whole or not at all, folders made as needed. */
public final class Saving {
    private Saving() {}

    /**
     * Writes text as UTF-8.
     *
     * @throws UncheckedIOException naming the file when it cannot be written
     */
    public static void text(Path file, String text) {
        bytes(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes: beside the file first, then in its place.
     *
     * @throws UncheckedIOException naming the file when it cannot be written
     */
    public static void bytes(Path file, byte[] bytes) {
        try {
            Path whole = file.toAbsolutePath();
            Path folder = whole.getParent();
            if (folder == null || Files.isDirectory(whole)) {
                throw new IOException("it is a folder");
            }
            Files.createDirectories(folder);
            Path beside = folder.resolve(
                    "." + whole.getFileName() + "." + ProcessHandle.current().pid() + ".part");
            try {
                Files.write(beside, bytes);
                move(beside, whole);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + file, e);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
