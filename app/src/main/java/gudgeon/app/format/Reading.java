package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import java.util.List;

/** What came of reading an engine file. */
public sealed interface Reading permits Reading.Sound, Reading.Faulty {
    /**
     * The file can be used.
     *
     * @param engine the engine it describes
     * @param remarks warnings and remarks in file order; no faults
     */
    record Sound(Engine engine, List<Problem> remarks) implements Reading {
        public Sound {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * The file cannot be used.
     *
     * @param problems everything found, in file order; at least one fault
     */
    record Faulty(List<Problem> problems) implements Reading {
        public Faulty {
            problems = List.copyOf(problems);
            if (problems.stream().noneMatch(problem -> problem.severity() == Severity.FAULT)) {
                throw new IllegalArgumentException("a faulty file has at least one fault");
            }
        }
    }
}
