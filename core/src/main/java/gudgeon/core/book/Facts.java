package gudgeon.core.book;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * What holds in a job now. Every list and map keeps the order of the book.
 *
 * @param setting which engine, which means, which end
 * @param clocked times and sessions
 * @param stripped what is apart
 * @param findings what was found
 * @param kept where things are
 * @param ledger what must balance before the engine is closed
 * @param gauged what was measured
 * @param built what is together again
 * @param contradictions what does not fit together; kept and shown, never refused
 */
public record Facts(
        Setting setting,
        Clocked clocked,
        Stripped stripped,
        Findings findings,
        Kept kept,
        Ledger ledger,
        Gauged gauged,
        Built built,
        List<Contradiction> contradictions) {
    public Facts {
        contradictions = List.copyOf(contradictions);
    }

    /**
     * What was measured.
     *
     * @param readings in the order of the book
     * @param renewed by part that was renewed, how many readings were taken before
     * @param instruments by name, the last word on each
     * @param cleaned by part
     * @param edition of the decision rule, 1998 or 2017
     */
    public record Gauged(
            List<ReadingAt> readings,
            Map<String, Integer> renewed,
            Map<String, InstrumentAt> instruments,
            Map<String, CleanedAt> cleaned,
            int edition) {
        public Gauged {
            readings = List.copyOf(readings);
            renewed = fixed(renewed);
            instruments = fixed(instruments);
            cleaned = fixed(cleaned);
        }
    }

    /** A reading, and when it was written down. */
    public record ReadingAt(UUID entry, Gauging.ReadingTaken said, OffsetDateTime at) {}

    /** The last word on an instrument, and when it was said. */
    public record InstrumentAt(Gauging.InstrumentDescribed said, OffsetDateTime at) {}

    /** A part was cleaned. @param readingsBefore how many readings the book had then */
    public record CleanedAt(Gauging.Cleaned said, OffsetDateTime at, int readingsBefore) {}

    static <K, V> Map<K, V> fixed(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /**
     * @param name what the owner calls the job; empty when it was never opened
     * @param like the shipped engine it started from; may be empty
     * @param basis the engine file and what was put right in it
     * @param means the person's means
     * @param target what is to be reached
     * @param willNotCome joints that will not come
     * @param confirmed features whose typical limits were confirmed
     */
    public record Setting(
            String name,
            String like,
            Basis basis,
            Setup.Settings means,
            Setup.TargetSet target,
            List<String> willNotCome,
            List<String> confirmed) {
        public Setting {
            willNotCome = List.copyOf(willNotCome);
            confirmed = List.copyOf(confirmed);
        }
    }

    /** The engine file as taken on, and patches in the order of the book. */
    public record Basis(String text, String sha256, List<Setup.Patch> patches) {
        public Basis {
            patches = List.copyOf(patches);
        }
    }

    /**
     * @param minutes minutes by operation or build step
     * @param opened when the job began
     * @param last when the last entry was written
     * @param session the working session that is open
     * @param leftSafe whether the last session ended safely; true before the first
     */
    public record Clocked(
            Map<String, Double> minutes,
            Optional<OffsetDateTime> opened,
            Optional<OffsetDateTime> last,
            Optional<Session> session,
            boolean leftSafe,
            String left) {
        public Clocked {
            minutes = fixed(minutes);
        }

        public double totalMinutes() {
            return minutes.values().stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    /** An open working session. @param operation what was begun and is not done; empty when nothing */
    public record Session(String id, OffsetDateTime since, String operation) {}

    /**
     * @param acts what was done in the strip and stands, in order
     * @param open joints and ready operations that are done now; a joint put together again is not among them
     * @param away parts that are away now, and where; "" when not said
     * @param aside parts that hang aside
     */
    public record Stripped(List<Act> acts, List<String> open, Map<String, String> away, List<String> aside) {
        public Stripped {
            acts = List.copyOf(acts);
            open = List.copyOf(open);
            away = fixed(away);
            aside = List.copyOf(aside);
        }
    }

    /**
     * One thing done in the strip.
     *
     * @param entry the entry that says so
     * @param operation joint or ready operation; empty for parts that came away
     * @param cut whether the joint was destroyed
     * @param parts parts that came away as one piece; empty for the others
     */
    public record Act(UUID entry, String operation, boolean cut, List<String> parts) {
        public Act {
            parts = List.copyOf(parts);
        }
    }

    /**
     * @param joints by joint, how it was found
     * @param troubles all troubles, solved ones too
     * @param conditions by part, what it looks like
     * @param routings by part, how it runs
     */
    public record Findings(
            Map<String, FoundJoint> joints,
            List<TroubleSoFar> troubles,
            Map<String, List<String>> conditions,
            Map<String, List<String>> routings) {
        public Findings {
            joints = fixed(joints);
            troubles = List.copyOf(troubles);
            conditions = fixed(conditions);
            routings = fixed(routings);
        }
    }

    /**
     * A joint as found.
     *
     * @param counts every count, in order; the last one holds
     * @param pieces from the last entry that says what they were
     * @param bag where they are; empty when not said
     * @param differs the last word on how it differs from the file
     */
    public record FoundJoint(String joint, List<Integer> counts, List<Strip.Piece> pieces, String bag, String differs) {
        public FoundJoint {
            counts = List.copyOf(counts);
            pieces = List.copyOf(pieces);
        }

        /** The count that holds. */
        public int count() {
            return counts.isEmpty() ? 0 : counts.getLast();
        }
    }

    /**
     * A trouble and what was tried.
     *
     * @param entry the entry that told it
     * @param outcome how it stands: NO while it is not solved
     */
    public record TroubleSoFar(UUID entry, Fault.Trouble trouble, List<Fault.Rescue> tried, Fault.Outcome outcome) {
        public TroubleSoFar {
            tried = List.copyOf(tried);
        }

        public boolean solved() {
            return outcome != Fault.Outcome.NO;
        }
    }

    /**
     * @param bags by what is written on them
     * @param marked parts that are marked, and how
     * @param renewed by part, the new item
     * @param aids supports, straps, pins fitted now that the file does not have, and about what
     * @param ordered how many of each specification are on their way
     * @param received how many arrived
     * @param tools by tool, the last word on it
     * @param compared by specification and fact, the last comparison of new with old
     */
    public record Kept(
            Map<String, Bag> bags,
            Map<String, String> marked,
            Map<String, String> renewed,
            Map<String, String> aids,
            Map<String, Integer> ordered,
            Map<String, Integer> received,
            Map<String, Tool> tools,
            Map<String, Map<String, Keeping.Compared>> compared) {
        public Kept {
            bags = fixed(bags);
            marked = fixed(marked);
            renewed = fixed(renewed);
            aids = fixed(aids);
            ordered = fixed(ordered);
            received = fixed(received);
            tools = fixed(tools);
            Map<String, Map<String, Keeping.Compared>> facts = new LinkedHashMap<>();
            compared.forEach((spec, byFact) -> facts.put(spec, fixed(byFact)));
            compared = fixed(facts);
        }
    }

    /** The last word on a tool, and when it was said. */
    public record Tool(Keeping.ToolMarked said, OffsetDateTime at) {}

    /**
     * A bag.
     *
     * @param joints by joint, how many of its fasteners are in it
     * @param contents further contents, in words
     * @param place where it lies; empty when not said
     * @param counts counts of the whole bag, in order
     * @param opened how often somebody was at it since it was filled
     */
    public record Bag(
            String bag, Map<String, Integer> joints, String contents, String place, List<Integer> counts, int opened) {
        public Bag {
            joints = fixed(joints);
            counts = List.copyOf(counts);
        }
    }

    /**
     * @param covered openings that are covered, and with what
     * @param uncovered openings that were uncovered again
     * @param rags by place, how many went in and came out
     * @param fluids by circuit, litres out and in
     * @param oiled by surface, when it was last oiled
     */
    public record Ledger(
            Map<String, String> covered,
            List<String> uncovered,
            Map<String, InAndOut> rags,
            Map<String, Litres> fluids,
            Map<String, OffsetDateTime> oiled) {
        public Ledger {
            covered = fixed(covered);
            uncovered = List.copyOf(uncovered);
            rags = fixed(rags);
            fluids = fixed(fluids);
            oiled = fixed(oiled);
        }
    }

    /** How many went in and came out. */
    public record InAndOut(int in, int out) {
        public int left() {
            return in - out;
        }
    }

    /** Litres caught and filled, and where the waste went. */
    public record Litres(double drained, double filled, List<String> wasteTo) {
        public Litres {
            wasteTo = List.copyOf(wasteTo);
        }
    }

    /**
     * @param steps build steps done, in order
     * @param joints by joint, how far its stages are
     * @param signed checks signed
     * @param forces turning forces, in order
     */
    public record Built(
            List<Build.StepBuilt> steps,
            Map<String, Tightened> joints,
            List<String> signed,
            List<Build.TurningForce> forces) {
        public Built {
            steps = List.copyOf(steps);
            joints = fixed(joints);
            signed = List.copyOf(signed);
            forces = List.copyOf(forces);
        }
    }

    /**
     * By stage, how far it is.
     *
     * @param startedAgain how often all fasteners were renewed and the stages begun again
     * @param touched when somebody was last at it; empty when nobody was since its stages begun again
     * @param leftSince whether a session began or ended after that
     */
    public record Tightened(
            Map<Integer, Stage> stages, int startedAgain, Optional<OffsetDateTime> touched, boolean leftSince) {
        public Tightened {
            stages = fixed(stages);
        }
    }

    /**
     * A stage.
     *
     * @param reached fasteners that reached it, in order; after an interruption of a torque stage none
     * @param turned fasteners that got the angle, each once
     * @param interrupted whether it was broken off and not taken up again
     * @param certain whether every turned fastener is sure to be in {@code turned}
     */
    public record Stage(List<String> reached, List<String> turned, boolean interrupted, boolean certain) {
        public static final Stage UNTOUCHED = new Stage(List.of(), List.of(), false, true);

        public Stage {
            reached = List.copyOf(reached);
            turned = List.copyOf(turned);
        }
    }

    /**
     * Entries that do not fit together.
     *
     * @param entry the later one
     * @param with the earlier ones
     * @param about the joint, bag, fastener or place that it is about
     */
    public record Contradiction(Sort sort, UUID entry, List<UUID> with, String about) {
        public Contradiction {
            with = List.copyOf(with);
        }

        /** Sorts of contradiction. */
        public enum Sort {
            /** It was undone already. */
            ALREADY_OUT,
            /** It was put back without having been undone. */
            NOT_OUT,
            /** Two counts of the same thing differ. */
            COUNTS_DIFFER,
            /** What it rests on was withdrawn. */
            RESTS_ON_WITHDRAWN,
            /** A fastener got the angle of a stage twice. */
            TURNED_TWICE,
            /** More came out than went in. */
            MORE_OUT_THAN_IN,
            /** It withdraws or replaces something that is not in the book before it. */
            WITHDRAWS_NOTHING
        }
    }
}
