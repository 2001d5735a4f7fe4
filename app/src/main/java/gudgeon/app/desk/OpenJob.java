package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Reading;
import gudgeon.app.format.ShippedEngines;
import gudgeon.core.book.Body;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Setup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/**
 * A job begins.
 *
 * @param name what the owner calls it
 * @param start which engine it is on
 * @param target what is to be reached, ids or names; may be empty for now
 * @param means the person's means
 */
public record OpenJob(String name, Start start, StripQuestion.Goal target, Setup.Settings means) {
    /** With which engine file a job begins. */
    public sealed interface Start {
        /** A shipped engine as it is. */
        record Shipped(String engine) implements Start {}

        /** An engine like a shipped one: its file under another name, to be corrected while stripping. */
        record Like(String engine, String name) implements Start {}

        /** Nearly nothing: a block on a stand. */
        record Empty(String name) implements Start {}

        /** The user's own file. */
        record Own(Path file) implements Start {}

        /** The user's own file, as text. */
        record Text(String text) implements Start {}
    }

    /** The answer. */
    public sealed interface Reply {
        record Opened(Job job) implements Reply {}

        record Refused(List<FieldProblem> problems) implements Reply {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    private record Basis(String text, String like, List<FieldProblem> problems) {}

    /** @param id id of the first entry, so that sending the form twice opens one job */
    public Reply open(Workshop workshop, Who who, Optional<UUID> id) {
        UUID first = id.orElseGet(workshop::newId);
        Optional<Job> there = workshop.jobIds().stream()
                .flatMap(job -> workshop.findJob(job).stream())
                .filter(job -> job.state().history().getFirst().entry().id().equals(first))
                .findFirst();
        if (there.isPresent()) {
            return new Reply.Opened(there.get());
        }
        List<FieldProblem> problems = new ArrayList<>(Checks.name("name", name));
        if (name.isBlank()) {
            problems.add(FieldProblem.of("name", FieldProblem.Kind.EMPTY, ""));
        }
        Basis basis = basis();
        problems.addAll(basis.problems());
        if (!problems.isEmpty()) {
            return new Reply.Refused(problems);
        }
        return opened(workshop, who, first, basis);
    }

    private Reply opened(Workshop workshop, Who who, UUID first, Basis basis) {
        Reading reading = new Plans().reading("engine", basis.text());
        if (!(reading instanceof Reading.Sound sound)) {
            return new Reply.Refused(faults((Reading.Faulty) reading));
        }
        NameSearch names = new NameSearch(sound.engine());
        Setup.TargetSet reached = new Setup.TargetSet(
                names.parts(target.reach()),
                names.parts(target.aside()),
                names.joints(target.open()),
                names.features(target.measure()));
        names.ways(means.with());
        if (!names.unknown().isEmpty()) {
            return new Reply.Refused(Checks.unknown("target", names));
        }
        List<Body> bodies = new ArrayList<>(List.of(
                new Setup.JobOpened(name.strip(), basis.like()),
                means,
                new Setup.EngineAdopted(basis.text(), EngineText.sha256(basis.text()))));
        if (!reached.isEmpty()) {
            bodies.add(reached);
        }
        String job = freeId(workshop.jobIds());
        List<Entry> entries = workshop.entries(job, bodies, List.of(), who, first);
        workshop.store().add(entries);
        return new Reply.Opened(workshop.findJob(job).orElseThrow());
    }

    private static List<FieldProblem> faults(Reading.Faulty faulty) {
        return faulty.problems().stream()
                .map(Problem::text)
                .map(text -> new FieldProblem("engine", FieldProblem.Kind.FILE, "", List.of(), text))
                .toList();
    }

    private String freeId(List<String> taken) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String stem = plain.isEmpty() ? "job" : plain.substring(0, Math.min(plain.length(), 40));
        String free = stem;
        for (int n = 2; taken.contains(free); n++) {
            free = stem + "-" + n;
        }
        return free;
    }

    private Basis basis() {
        return switch (start) {
            case Start.Shipped shipped -> shipped(shipped.engine(), "");
            case Start.Like like -> shipped(like.engine(), like.name());
            case Start.Empty empty -> new Basis(nearlyNothing(empty.name()), "", List.of());
            case Start.Text own -> new Basis(own.text(), "", List.of());
            case Start.Own own -> {
                Reading reading = new EngineQuestion(own.file().toString()).ask();
                yield reading instanceof Reading.Faulty faulty
                        ? new Basis("", "", faults(faulty))
                        : new Basis(text(ShippedEngines.resolve(own.file().toString())), "", List.of());
            }
        };
    }

    private static Basis shipped(String engine, String as) {
        Optional<Path> file = ShippedEngines.find(engine);
        if (file.isEmpty()) {
            List<String> near = Nearest.to(engine, ShippedEngines.ids());
            return new Basis("", "", List.of(new FieldProblem("engine", FieldProblem.Kind.UNKNOWN, engine, near, "")));
        }
        String text = text(file.get());
        if (as.isBlank()) {
            return new Basis(text, engine, List.of());
        }
        List<FieldProblem> problems = Checks.name("engine-name", as);
        List<Setup.Patch> renamed = List.of(
                new Setup.Patch("engine/id", EngineText.at(text, "engine/id").orElse(""), ownId(as)),
                new Setup.Patch(
                        "engine/name", EngineText.at(text, "engine/name").orElse(""), EngineText.quoted(as.strip())));
        return new Basis(EngineText.correct(text, renamed).text(), engine, problems);
    }

    private static String ownId(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^[-0-9]+|-+$", "");
        return plain.isEmpty() ? "my-engine" : plain.substring(0, Math.min(plain.length(), 40));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    /** The smallest engine file that can be worked on: parts and joints are added while stripping. */
    static String nearlyNothing(String name) {
        String called = name.isBlank() ? "My engine" : name.strip();
        return """
                format: 1
                engine:
                  id: %s
                  name: %s
                  base: stand
                zones:
                  top: { name: Top }
                  underneath: { name: Underneath, go: 2 min, back: 1 min }
                circuits:
                  oil: { name: Engine oil, kind: oil, fluid: engine oil, drains: [{ joint: drain-plug-thread }], hazards: [used-oil-skin] }
                parts:
                  stand: { name: "Stand, or the vehicle", mass: 20 kg }
                  block: { name: Engine block, mass: 40 kg }
                  drain-plug: { name: Oil drain plug, mass: 30 g }
                joints:
                  mounts:
                    name: Mounts
                    between: [block, stand]
                    fasteners: [{ count: 4, kind: bolt }]
                  drain-plug-thread:
                    name: Oil drain plug
                    between: [drain-plug, block]
                    zone: underneath
                    fasteners: [{ kind: plug }]
                """.formatted(ownId(called), EngineText.quoted(called));
    }
}
