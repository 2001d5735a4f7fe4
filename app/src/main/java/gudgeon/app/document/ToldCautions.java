package gudgeon.app.document;

import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which cautions a step tells, and how fully, so that each stands before its action and none is drowned in repetition. Each
 * is told in full unless it was within the last steps, few of them for a danger; then its title stands there, as grave as
 * before, with the number of the step that has the text. What concerns only the parts that come along inside a large
 * assembly is named by its title. Used for one plan, step after step.
 */
public final class ToldCautions {
    /** A caution told in full is named by its title for as many steps. */
    static final int REMEMBERED_STEPS = 8;

    /** A danger told in full is named by its title for as many steps: its text is on the same page or the one before. */
    static final int REMEMBERED_DANGER_STEPS = 3;

    /** An assembly of more parts than this is handled as one thing. */
    private static final int MOST_PARTS = 6;

    /** About the weight of the whole, whichever part brought it in. */
    private static final String HEAVY = "heavy-lift";

    private final Cautions catalogue;
    private final Engine engine;
    private final Map<String, Integer> toldInFull = new HashMap<>();

    public ToldCautions(Cautions catalogue, Engine engine) {
        this.catalogue = catalogue;
        this.engine = engine;
    }

    /**
     * What one step tells; each caution is in one of the lists.
     *
     * @param dangers in full
     * @param cautions in full
     * @param recent told in full shortly before, dangers first
     * @param along of parts that come along inside a large assembly, by title
     */
    public record Told(List<Caution> dangers, List<Caution> cautions, List<Recent> recent, List<Caution> along) {
        public Told {
            dangers = List.copyOf(dangers);
            cautions = List.copyOf(cautions);
            recent = List.copyOf(recent);
            along = List.copyOf(along);
        }
    }

    /** A caution, and the step that has its text. */
    public record Recent(Caution caution, int step) {
        /** Whether it is about life or limb. */
        boolean danger() {
            return caution.level() == Caution.Level.DANGER;
        }
    }

    /**
     * The cautions of the next step.
     *
     * @param step its number, more than that of the one before
     * @param ids its cautions; ids that come twice are told once
     * @param parts the parts that it lifts or places; empty for other steps
     */
    public Told at(int step, List<String> ids, List<String> parts) {
        Set<String> along = along(parts);
        List<Caution> dangers = new ArrayList<>();
        List<Caution> full = new ArrayList<>();
        List<Recent> recent = new ArrayList<>();
        List<Caution> titles = new ArrayList<>();
        for (Caution caution : catalogue.ranked(List.copyOf(new LinkedHashSet<>(ids)))) {
            Integer before = toldInFull.get(caution.id());
            boolean danger = caution.level() == Caution.Level.DANGER;
            int remembered = danger ? REMEMBERED_DANGER_STEPS : REMEMBERED_STEPS;
            if (before != null && step - before <= remembered) {
                recent.add(new Recent(caution, before));
            } else if (danger) {
                dangers.add(caution);
                toldInFull.put(caution.id(), step);
            } else if (along.contains(caution.id())) {
                titles.add(caution);
            } else {
                full.add(caution);
                toldInFull.put(caution.id(), step);
            }
        }
        return new Told(dangers, full, recent, titles);
    }

    /** Cautions of an assembly that its heaviest part does not have. */
    private Set<String> along(List<String> parts) {
        if (parts.size() <= MOST_PARTS) {
            return Set.of();
        }
        Part main = parts.stream()
                .map(engine::part)
                .max(Comparator.comparingDouble(Part::massKilograms))
                .orElseThrow();
        Set<String> ids = new LinkedHashSet<>();
        parts.forEach(part -> ids.addAll(engine.part(part).care().cautions()));
        main.care().cautions().forEach(ids::remove);
        ids.remove(HEAVY);
        return ids;
    }
}
