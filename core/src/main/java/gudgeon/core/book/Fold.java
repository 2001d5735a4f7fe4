package gudgeon.core.book;

import gudgeon.core.book.Facts.Contradiction;
import gudgeon.core.book.JobState.Told;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One pass over a book. Each instance serves for one. */
final class Fold {
    private String name = "";
    private String like = "";
    private Setup.Settings means = new Setup.Settings(List.of(), 0, "metric", "");
    private String text = "";
    private String sha256 = "";
    private final List<Setup.Patch> patches = new ArrayList<>();
    private Setup.TargetSet target = Setup.TargetSet.NOTHING;
    private final Set<String> willNotCome = new LinkedHashSet<>();
    private final Set<String> confirmed = new LinkedHashSet<>();
    private @Nullable OffsetDateTime opened;
    private @Nullable OffsetDateTime last;
    private Facts.@Nullable Session session;
    private boolean leftSafe = true;
    private String left = "";
    private final Map<String, Double> minutes = new LinkedHashMap<>();
    private final List<Contradiction> contradictions = new ArrayList<>();

    private final StripFold strip = new StripFold(contradictions);
    private final KeepingFold keeping = new KeepingFold(contradictions);
    private final GaugingFold gauging = new GaugingFold();
    private final BuildFold build = new BuildFold(contradictions, strip);

    Facts all(List<Told> history) {
        Set<UUID> known = new HashSet<>();
        for (Told told : history) {
            UUID id = told.entry().id();
            if (told.counts()) {
                pointsBack(told.entry(), known);
                add(told.entry());
            } else {
                strip.lost(told.entry());
            }
            known.add(id);
        }
        return new Facts(
                new Facts.Setting(
                        name,
                        like,
                        new Facts.Basis(text, sha256, patches),
                        means,
                        target,
                        List.copyOf(willNotCome),
                        List.copyOf(confirmed)),
                new Facts.Clocked(
                        minutes,
                        Optional.ofNullable(opened),
                        Optional.ofNullable(last),
                        Optional.ofNullable(session),
                        leftSafe,
                        left),
                strip.stripped(),
                strip.findings(),
                keeping.kept(),
                keeping.ledger(),
                gauging.gauged(),
                build.built(),
                contradictions);
    }

    private void pointsBack(Entry entry, Set<UUID> known) {
        entry.replaces().filter(id -> !known.contains(id)).ifPresent(id -> nothing(entry, id));
        if (entry.body() instanceof Word.Withdrawn withdrawn && !known.contains(withdrawn.entry())) {
            nothing(entry, withdrawn.entry());
        }
    }

    private void nothing(Entry entry, UUID missing) {
        contradictions.add(
                new Contradiction(Contradiction.Sort.WITHDRAWS_NOTHING, entry.id(), List.of(), missing.toString()));
    }

    private void add(Entry entry) {
        last = entry.stamp().at();
        switch (entry.body()) {
            case Setup setup -> setup(entry, setup);
            case Strip stripped -> {
                strip.add(entry, stripped);
                keeping.found(entry, stripped);
                worked(stripped);
            }
            case Fault fault -> {
                strip.fault(entry, fault);
                if (fault instanceof Fault.Rescue rescue) {
                    spend(rescue.joint(), rescue.minutes());
                }
            }
            case Keeping kept -> {
                keeping.add(entry, kept);
                if (kept instanceof Keeping.PartMoved moved) {
                    strip.moved(moved);
                }
                if (kept instanceof Keeping.Renewed renewed) {
                    gauging.renewed(renewed.part());
                }
            }
            case Fluid fluid -> keeping.fluid(entry, fluid);
            case Gauging read -> gauging.add(entry, read);
            case Build built -> {
                build.add(entry, built);
                if (built instanceof Build.StepBuilt step) {
                    spend(step.step(), step.minutes());
                    finished(step.step());
                }
            }
            case Word word -> {}
        }
    }

    private void worked(Strip stripped) {
        switch (stripped) {
            case Strip.OperationStarted started -> {
                if (session != null) {
                    session = new Facts.Session(session.id(), session.since(), started.operation());
                }
            }
            case Strip.OperationDone done -> {
                spend(done.operation(), done.minutes());
                finished(done.operation());
            }
            case Strip.PutBack back -> {}
            case Strip.Removed removed -> {}
            case Strip.AsFound found -> {}
            case Strip.Routing routing -> {}
        }
    }

    private void spend(String operation, double spent) {
        if (spent > 0) {
            minutes.merge(operation, spent, Double::sum);
        }
    }

    private void finished(String operation) {
        if (session != null && session.operation().equals(operation)) {
            session = new Facts.Session(session.id(), session.since(), "");
        }
    }

    private void setup(Entry entry, Setup setup) {
        switch (setup) {
            case Setup.JobOpened job -> {
                name = job.name();
                like = job.like();
                opened = opened == null ? entry.stamp().at() : opened;
            }
            case Setup.Settings settings -> means = settings;
            case Setup.EngineAdopted adopted -> {
                text = adopted.text();
                sha256 = adopted.sha256();
                patches.clear();
            }
            case Setup.EngineCorrected corrected -> patches.addAll(corrected.patches());
            case Setup.TargetSet set -> target = set;
            case Setup.WillNotCome wont -> willNotCome.add(wont.joint());
            case Setup.ComesAfterAll comes -> willNotCome.remove(comes.joint());
            case Setup.SessionStarted started -> {
                session = new Facts.Session(started.session(), entry.stamp().at(), "");
                build.left();
            }
            case Setup.SessionEnded ended -> {
                session = null;
                build.left();
                leftSafe = ended.safe();
                left = ended.left();
            }
            case Setup.LimitConfirmed limit -> confirmed.add(limit.feature());
            case Setup.PlaceSet place -> {} // for the daylight alone
        }
    }
}
