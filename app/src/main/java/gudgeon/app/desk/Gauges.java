package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.book.Gauging;
import gudgeon.core.measuring.Expanding;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Material;
import gudgeon.core.measuring.Repeatability;
import gudgeon.core.measuring.TwoLimits;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The instruments of a person: the last word on each in all books of the store that name the same toolbox (decision 0025), and
 * the common kinds with typical figures for those who described none.
 *
 * @param described by name
 * @param now when it is asked, for the age of checks
 */
public record Gauges(Map<String, Facts.InstrumentAt> described, OffsetDateTime now) {
    private static final TwoLimits ANY_SIZE = new TwoLimits(0, 10_000);
    private static final double TRIED_FREEDOM = 10;

    public Gauges {
        described = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(described));
    }

    /** The instruments that are used for a job. */
    public static Gauges of(Workshop workshop, Job job) {
        String whose = job.facts().setting().means().toolbox();
        Map<String, Facts.InstrumentAt> described = new LinkedHashMap<>();
        add(job, described);
        for (String id : workshop.jobIds()) {
            workshop.findJob(id)
                    .filter(other -> !other.id().equals(job.id()))
                    .filter(other -> other.facts().setting().means().toolbox().equals(whose))
                    .ifPresent(other -> add(other, described));
        }
        return new Gauges(described, job.now());
    }

    private static void add(Job job, Map<String, Facts.InstrumentAt> described) {
        job.facts()
                .gauged()
                .instruments()
                .forEach((name, one) -> described.merge(name, one, (a, b) -> b.at().isAfter(a.at()) ? b : a));
    }

    /** Names of what one can read with: one's own first, then common kinds. */
    public List<String> names() {
        List<String> names = new ArrayList<>(described.keySet());
        Arrays.stream(InstrumentKind.values())
                .map(InstrumentKind::word)
                .filter(kind -> !names.contains(kind))
                .forEach(names::add);
        return names;
    }

    /** The instrument of a name; empty when it is neither described nor a common kind. */
    public Optional<Instrument> find(String name) {
        Optional<Instrument> own = Optional.ofNullable(described.get(name)).map(this::built);
        return own.isPresent() ? own : InstrumentKind.find(name).map(InstrumentKind::typical);
    }

    /** How well readings with it repeat: as tried out, or assumed. */
    public Repeatability repeatability(Instrument instrument) {
        return Optional.ofNullable(described.get(instrument.id()))
                .map(one -> one.said().repeatability_mm())
                .filter(deviation -> deviation > 0)
                .map(deviation -> new Repeatability(deviation, TRIED_FREEDOM, false))
                .orElseGet(() -> Repeatability.assumed(instrument));
    }

    private Instrument built(Facts.InstrumentAt one) {
        Gauging.InstrumentDescribed said = one.said();
        int days = (int) Math.max(0, Duration.between(one.at(), now).toDays());
        return new Instrument(
                said.instrument(),
                said.resolution_mm(),
                said.maximumError_mm(),
                ANY_SIZE,
                Expanding.of(Material.GAUGE_STEEL),
                said.checked() ? Optional.of(new Instrument.Check(said.offset_mm(), days)) : Optional.empty());
    }
}
