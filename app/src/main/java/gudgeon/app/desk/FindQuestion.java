package gudgeon.app.desk;

import gudgeon.app.format.FindingCase;
import gudgeon.app.format.FindingCaseReader;
import gudgeon.app.format.FindingKnowledge;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Severity;
import gudgeon.core.finding.Diagnosis;
import gudgeon.core.finding.EngineModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/**
 * What is wrong?
 *
 * @param caseFile path of a case: engine facts, and what was seen and measured
 */
public record FindQuestion(String caseFile) {
    /** What came of it. */
    public sealed interface Answer {
        /**
         * It could be worked out.
         *
         * @param asked the case as understood
         * @param diagnosis what is believed
         */
        record Found(FindingCase asked, Diagnosis diagnosis) implements Answer {}

        /**
         * The case cannot be used.
         *
         * @param problems everything wrong with it
         */
        record Faulty(List<Problem> problems) implements Answer {
            public Faulty {
                problems = List.copyOf(problems);
            }
        }
    }

    /** Reads the case and works out what is believed. */
    public Answer ask() {
        FindingCaseReader.Read read;
        try {
            read = FindingCaseReader.read(caseFile, Files.readAllBytes(Path.of(caseFile)));
        } catch (NoSuchFileException | InvalidPathException e) {
            return faulty("there is no such file");
        } catch (IOException | SecurityException e) {
            return faulty("the file cannot be read");
        }
        if (read.found().isEmpty()) {
            return new Answer.Faulty(read.problems());
        }
        return of(read.found().get());
    }

    /** What is believed in a case. */
    public static Answer.Found of(FindingCase asked) {
        EngineModel model =
                new EngineModel(FindingKnowledge.shipped().withChances(asked.factors()), asked.facts());
        return new Answer.Found(asked, new Diagnosis(model, asked.observations()));
    }

    private Answer faulty(String what) {
        return new Answer.Faulty(List.of(new Problem(caseFile, 0, 0, Severity.FAULT, what, "")));
    }
}
