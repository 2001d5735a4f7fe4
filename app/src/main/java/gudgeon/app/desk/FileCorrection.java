package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Reading;
import gudgeon.app.format.Severity;
import gudgeon.core.book.Setup;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts a job's engine file right, and says at which field a fault would be. */
final class FileCorrection {
    private static final Pattern KEY = Pattern.compile("^\\s+(name|between|fasteners|kind|mass|tighten):");

    private final Job job;
    private final List<FieldProblem> problems = new ArrayList<>();
    private final List<Setup.Patch> patches = new ArrayList<>();

    FileCorrection(Job job) {
        this.job = job;
    }

    void refuse(FieldProblem problem) {
        problems.add(problem);
    }

    void refuseAll(List<FieldProblem> more) {
        problems.addAll(more);
    }

    boolean hasProblem(String field) {
        return problems.stream().anyMatch(problem -> problem.field().equals(field));
    }

    boolean isSound() {
        return problems.isEmpty();
    }

    /** Something stands at a path now, whatever stood there. */
    void put(String path, String yaml) {
        patches.add(new Setup.Patch(
                path, EngineText.at(job.ownEngine().text(), path).orElse(""), yaml));
    }

    /** Parts named in a field, several parted by commas, lines, "to" or "and". */
    List<String> parts(String field, String words) {
        NameSearch names = new NameSearch(job.engine());
        List<String> found = names.parts(split(words));
        refuseAll(Checks.unknown(field, names));
        return found;
    }

    /** The first way of parting the words of which every piece names a part; a name may hold a comma or an "and" itself. */
    private List<String> split(String words) {
        List<String> byTo = pieces(words, "\\s+(?:to|and|-|–)\\s+");
        List<String> byComma = pieces(words, "[,;\\n]");
        List<String> byBoth = byComma.stream()
                .flatMap(piece -> pieces(piece, "\\s+(?:to|and|-|–)\\s+").stream())
                .toList();
        for (List<String> way : List.of(byTo, byComma, byBoth)) {
            NameSearch trial = new NameSearch(job.engine());
            trial.parts(way);
            if (trial.unknown().isEmpty()) {
                return way;
            }
        }
        return byComma.size() > 1 ? byComma : byTo;
    }

    private static List<String> pieces(String words, String at) {
        return Arrays.stream(words.split(at, -1))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    /** An id for something new, from its name. */
    String freeId(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^[-0-9]+|-+$", "");
        String stem = plain.isEmpty() ? "new" : plain.substring(0, Math.min(plain.length(), 50));
        String free = stem;
        for (int n = 2; isTaken(free); n++) {
            free = stem + "-" + n;
        }
        return free;
    }

    private boolean isTaken(String id) {
        return job.engine().findPart(id).isPresent()
                || job.engine().findJoint(id).isPresent()
                || job.engine().findReady(id).isPresent()
                || job.engine().rules().checks().stream()
                        .anyMatch(check -> check.id().equals(id))
                || EngineText.at(job.ownEngine().text(), "joints/" + id).isPresent()
                || EngineText.at(job.ownEngine().text(), "parts/" + id).isPresent();
    }

    /** The fields that a joint is described by, as YAML; what cannot be read is noted. */
    String fasteners(String words) {
        if (words.isBlank()) {
            refuse(FieldProblem.of("fasteners", FieldProblem.Kind.EMPTY, ""));
            return "";
        }
        Optional<String> yaml = FastenerWords.yaml(words);
        if (yaml.isEmpty()) {
            refuse(FieldProblem.of("fasteners", FieldProblem.Kind.FASTENERS, Checks.shortened(words)));
        }
        return yaml.orElse("");
    }

    /** The stages of tightening, as YAML; what cannot be read is noted, what is empty stays empty. */
    String tighten(String words) {
        if (words.isBlank()) {
            return "";
        }
        Optional<String> yaml = TightenWords.yaml(words);
        if (yaml.isEmpty()) {
            refuse(FieldProblem.of("tighten", FieldProblem.Kind.TIGHTENING, Checks.shortened(words)));
        }
        return yaml.orElse("");
    }

    /** The correction as a fact, when the corrected file has no fault. */
    Deed.Telling tell() {
        if (!problems.isEmpty()) {
            return new Deed.Telling.Wrong(problems);
        }
        EngineText.Corrected corrected = EngineText.correct(job.ownEngine().text(), patches);
        if (!corrected.refused().isEmpty()) {
            return Deed.Telling.wrong(FieldProblem.of(
                    "name",
                    FieldProblem.Kind.CHANGED_MEANWHILE,
                    corrected.refused().getFirst().path()));
        }
        return switch (job.plans().reading(job.id(), corrected.text())) {
            case Reading.Sound sound -> Deed.Telling.facts(new Setup.EngineCorrected(patches));
            case Reading.Faulty faulty ->
                new Deed.Telling.Wrong(faulty.problems().stream()
                        .filter(problem -> problem.severity() == Severity.FAULT)
                        .map(problem -> atField(problem, corrected.text()))
                        .distinct()
                        .toList());
        };
    }

    private static FieldProblem atField(Problem problem, String text) {
        List<String> lines = text.lines().toList();
        String field = "name";
        for (int at = Math.min(problem.line(), lines.size()) - 1; at >= 0; at--) {
            Matcher key = KEY.matcher(lines.get(at));
            if (key.find()) {
                field = key.group(1).equals("kind") ? "fasteners" : key.group(1);
                break;
            }
        }
        String said = problem.what() + (problem.wouldBeRight().isEmpty() ? "" : "; " + problem.wouldBeRight());
        return new FieldProblem(field, FieldProblem.Kind.FILE, "", List.of(), said);
    }
}
