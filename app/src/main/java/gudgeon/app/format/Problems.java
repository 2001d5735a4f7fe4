package gudgeon.app.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Collects the problems of one file. What is said twice of one place, because the place was copied by {@code each}, is kept
 * once: two problems are the same when place and text agree apart from digits.
 */
final class Problems {
    /** More than this many are not listed one by one; nobody reads them, and memory stays bounded. */
    static final int MOST = 200;

    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private int faults;
    private int unlisted;

    Problems(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    void fault(Node at, String what, String wouldBeRight) {
        fault(at.getStartMark(), what, wouldBeRight);
    }

    void fault(Optional<Mark> at, String what, String wouldBeRight) {
        add(Severity.FAULT, line(at), column(at), what, wouldBeRight);
    }

    void warning(Optional<Mark> at, String what, String wouldBeRight) {
        add(Severity.WARNING, line(at), column(at), what, wouldBeRight);
    }

    void remark(Optional<Mark> at, String what, String wouldBeRight) {
        add(Severity.REMARK, line(at), column(at), what, wouldBeRight);
    }

    void add(Severity severity, int line, int column, String what, String wouldBeRight) {
        if (severity == Severity.FAULT) {
            faults++;
        }
        String key = line + ":" + column + ":" + severity + ":" + what.replaceAll("\\d+", "0");
        if (!seen.add(key)) {
            return;
        }
        if (found.size() >= MOST) {
            unlisted++;
            return;
        }
        found.add(new Problem(file, line, column, severity, what, wouldBeRight));
    }

    boolean anyFault() {
        return faults > 0;
    }

    /** Everything found, by place; what was too much is counted in a last line. */
    List<Problem> inFileOrder() {
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        if (anyFault() && sorted.stream().noneMatch(problem -> problem.severity() == Severity.FAULT)) {
            sorted.add(new Problem(
                    file, 0, 0, Severity.FAULT, "there are faults beside the first " + MOST + " warnings", ""));
        }
        if (unlisted > 0) {
            sorted.add(new Problem(file, 0, 0, Severity.REMARK, unlisted + " more problems are not listed", ""));
        }
        return List.copyOf(sorted);
    }

    static int line(Optional<Mark> at) {
        return at.map(mark -> mark.getLine() + 1).orElse(0);
    }

    static int column(Optional<Mark> at) {
        return at.map(mark -> mark.getColumn() + 1).orElse(0);
    }
}
