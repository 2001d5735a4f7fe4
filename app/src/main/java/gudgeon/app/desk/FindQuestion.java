package gudgeon.app.desk;

import gudgeon.app.format.FindingCase;
import gudgeon.app.format.FindingCaseReader;
import gudgeon.app.format.FindingKnowledge;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Reading;
import gudgeon.app.format.Severity;
import gudgeon.core.finding.Diagnosis;
import gudgeon.core.finding.EngineModel;
import gudgeon.core.finding.NextTests;
import gudgeon.core.finding.OpeningCosts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * What is wrong?
 *
 * @param engineFile path of an engine file or id of a shipped one; empty when the case says it all
 * @param caseFile path of a case: engine facts, and what was seen and measured
 */
public record FindQuestion(String engineFile, String caseFile) {
    /** What came of it. */
    public sealed interface Answer {
        /**
         * It could be worked out.
         *
         * @param asked the case as understood
         * @param diagnosis what is believed
         * @param next what to do next
         */
        record Found(FindingCase asked, Diagnosis diagnosis, NextTests next) implements Answer {}

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
        Map<String, String> known = Map.of();
        OpeningCosts costs = OpeningCosts.TYPICAL;
        if (!engineFile.isEmpty()) {
            switch (new EngineQuestion(engineFile).ask()) {
                case Reading.Faulty faulty -> {
                    return new Answer.Faulty(faulty.problems());
                }
                case Reading.Sound sound -> {
                    known = FindFacts.of(sound.engine());
                    costs = OpeningLevels.of(sound.engine());
                }
            }
        }
        FindingCaseReader.Read read;
        try {
            read = FindingCaseReader.read(caseFile, Files.readAllBytes(Path.of(caseFile)), known);
        } catch (NoSuchFileException | InvalidPathException e) {
            return faulty("there is no such file");
        } catch (IOException | SecurityException e) {
            return faulty("the file cannot be read");
        }
        if (read.found().isEmpty()) {
            return new Answer.Faulty(read.problems());
        }
        return of(read.found().get(), costs);
    }

    /** What is believed in a case of which no engine file is known. */
    public static Answer.Found of(FindingCase asked) {
        return of(asked, OpeningCosts.TYPICAL);
    }

    /** What is believed in a case, when opening the engine costs so much. */
    public static Answer.Found of(FindingCase asked, OpeningCosts costs) {
        EngineModel model =
                new EngineModel(FindingKnowledge.shipped().withChances(asked.factors()), asked.facts());
        Diagnosis diagnosis = new Diagnosis(model, asked.observations());
        return new Answer.Found(
                asked, diagnosis, new NextTests(diagnosis, costs, asked.tools()));
    }

    private Answer faulty(String what) {
        return new Answer.Faulty(List.of(new Problem(caseFile, 0, 0, Severity.FAULT, what, "")));
    }
}
