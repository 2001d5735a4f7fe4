package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/** Reads an engine file. The format is described in docs/engine-file.md. */
public final class EngineFile {
    private EngineFile() {}

    /** Reads a file. A file that is missing or cannot be read is a {@link Reading.Faulty}, never an exception. */
    public static Reading read(Path file) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            return unreadable(name, "this is a folder", "name an engine file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(name, in.readNBytes(PlainText.MOST_BYTES + 1));
        } catch (NoSuchFileException e) {
            return unreadable(name, "there is no such file", "name an engine file, or the id of a shipped one");
        } catch (IOException | SecurityException e) {
            return unreadable(name, "the file cannot be read", "check that you may read it");
        }
    }

    private static Reading unreadable(String name, String what, String wouldBeRight) {
        Problems problems = new Problems(name);
        problems.add(Severity.FAULT, 0, 0, what, wouldBeRight);
        return new Reading.Faulty(problems.inFileOrder());
    }

    /**
     * Reads the bytes of a file.
     *
     * @param fileName what the problems call the file
     */
    public static Reading read(String fileName, byte[] bytes) {
        Problems problems = new Problems(fileName);
        Optional<MappingNode> root = PlainText.of(bytes, problems).flatMap(text -> Tree.of(text, problems));
        if (root.isEmpty()) {
            return new Reading.Faulty(problems.inFileOrder());
        }
        EngineReader reader = new EngineReader(problems);
        Optional<Engine> engine = reader.read(root.get(), sha256(bytes));
        engine.ifPresent(sound -> new EngineCheck(sound, reader.names(), problems).run());
        if (engine.isEmpty() || problems.anyFault()) {
            return new Reading.Faulty(problems.inFileOrder());
        }
        return new Reading.Sound(engine.get(), problems.inFileOrder());
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
