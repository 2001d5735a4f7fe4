package gudgeon.app.desk;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.fitting.Leftover;
import gudgeon.core.fitting.MixedTin;
import gudgeon.core.fitting.TinBolt;
import gudgeon.core.fitting.TinHole;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which bolt of a mixed tin belongs in which hole, and where one that is left over may be missing.
 *
 * @param bolts each "8 x M6x1 x 20 mm"
 * @param holes each "cover edge: 4 x M6x1, clamped 8 mm, aluminium 16 mm deep", or "... 12 mm through, moving 3 mm behind"
 * @param left the bolt left over, as it is written among the bolts without its number; empty when none is
 * @param seen each "cover edge: 3": so many of these holes were looked at and are filled
 * @param cost each "cover edge: 20 min": time to open these again; 10 min for those not named
 */
public record TinQuestion(List<String> bolts, List<String> holes, String left, List<String> seen, List<String> cost) {
    private static final Pattern COUNTED = Pattern.compile("(\\d{1,3})\\s*(?:[x×]\\s*|\\s)(.+)");
    private static final Pattern ONE_BOLT = Pattern.compile(
            "(M\\s?[\\d.]+(?:\\s?[x×]\\s?[\\d.]+)?(?: LH)?|\\S+?/\\d+-\\d+)\\s*[x×]\\s*([\\d.,]+)\\s*(\\D*)");
    private static final Pattern WALL = Pattern.compile("([a-z ]*?)\\s*([\\d.,]+\\s?\\S+)\\s+(deep|through)");
    private static final Pattern BEHIND = Pattern.compile("(moving|part)\\s+([\\d.,]+\\s?\\S+)\\s+behind");
    private static final double USUAL_s = 600;

    public TinQuestion {
        bolts = List.copyOf(bolts);
        holes = List.copyOf(holes);
        seen = List.copyOf(seen);
        cost = List.copyOf(cost);
    }

    /** The answer. @param leftover where the bolt that is left may belong, when one is */
    public record Answer(MixedTin tin, Optional<Leftover> leftover) {}

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        MixedTin tin = MixedTin.of(
                bolts.stream().map(text -> bolt(text, written)).toList(),
                holes.stream().map(text -> hole(text, written)).toList());
        if (left.isBlank()) {
            return new Answer(tin, Optional.empty());
        }
        String name = bolt("1 x " + left, written).name();
        int kind = tin.bolts().stream().map(TinBolt::name).toList().indexOf(name);
        if (kind < 0) {
            throw new IllegalArgumentException(
                    "left: no bolt of the tin is " + name + "; it is counted among them, too");
        }
        int[] filled = new int[tin.holes().size()];
        double[] seconds = new double[filled.length];
        Arrays.fill(seconds, USUAL_s);
        for (String text : seen) {
            Written.Named named = written.named("seen", text, 1, 1, "cover edge: 3");
            filled[index(tin, "seen", named.name())] =
                    written.whole("seen", named.values().getFirst());
        }
        for (String text : cost) {
            Written.Named named = written.named("cost", text, 1, 1, "cover edge: 20 min");
            seconds[index(tin, "cost", named.name())] = written.quantity(
                            "cost of " + named.name(), named.values().getFirst(), QuantityKind.TIME)
                    .value();
        }
        return new Answer(tin, Optional.of(tin.leftover(kind, filled, seconds)));
    }

    private static int index(MixedTin tin, String field, String name) {
        int index = tin.holes().stream().map(TinHole::name).toList().indexOf(name);
        if (index < 0) {
            throw new IllegalArgumentException(field + ": no hole is called '" + Checks.shortened(name) + "'");
        }
        return index;
    }

    private static TinBolt bolt(String text, Written written) {
        Matcher counted = COUNTED.matcher(text.strip());
        Matcher read = ONE_BOLT.matcher(counted.matches() ? counted.group(2).strip() : "");
        if (!read.matches()) {
            throw new IllegalArgumentException(
                    "bolt: '" + Checks.shortened(text) + "' cannot be read; write it like \"8 x M6x1 x 20 mm\"");
        }
        String unit = read.group(3).isBlank() ? "mm" : read.group(3).strip();
        double length_mm = written.length_mm("length of a bolt", read.group(2) + " " + unit);
        MetricThread thread = written.thread("bolt", read.group(1));
        boolean leftHand = read.group(1).endsWith("LH");
        String size =
                java.math.BigDecimal.valueOf(length_mm).stripTrailingZeros().toPlainString();
        return new TinBolt(
                thread.designation() + (leftHand ? " LH" : "") + " x " + size,
                written.whole("bolts", counted.group(1)),
                thread,
                leftHand,
                length_mm);
    }

    private static TinHole hole(String text, Written written) {
        Written.Named named =
                written.named("hole", text, 2, 6, "cover edge: 4 x M6x1, clamped 8 mm, aluminium 16 mm deep");
        Matcher counted = COUNTED.matcher(named.values().getFirst());
        if (!counted.matches()) {
            throw new IllegalArgumentException("hole " + named.name() + ": '"
                    + named.values().getFirst() + "' does not say how many of which thread, like \"4 x M6x1\"");
        }
        double clamped_mm = 0;
        Optional<TinHole.Ground> ground = Optional.empty();
        TinHole.Behind behind = TinHole.Behind.NOTHING;
        for (String phrase : named.values().subList(1, named.values().size())) {
            Matcher wall = WALL.matcher(phrase);
            Matcher room = BEHIND.matcher(phrase);
            if (phrase.startsWith("clamped ")) {
                clamped_mm = written.length_mm("clamped at " + named.name(), phrase.substring(8));
            } else if (wall.matches()) {
                ground = Optional.of(new TinHole.Ground(
                        material(wall.group(1), named.name()),
                        written.length_mm("depth of " + named.name(), wall.group(2)),
                        wall.group(3).equals("through")));
            } else if (room.matches()) {
                behind = new TinHole.Behind(
                        room.group(1).equals("moving"),
                        written.length_mm("room behind " + named.name(), room.group(2)),
                        behind.opensTo());
            } else if (phrase.startsWith("opens to ")) {
                behind = new TinHole.Behind(
                        behind.moves(), behind.room_mm(), phrase.substring(9).strip());
            } else {
                throw new IllegalArgumentException(
                        "hole " + named.name() + ": '" + Checks.shortened(phrase)
                                + "' is not understood; say clamped 8 mm, aluminium 16 mm deep (or through), moving 3 mm behind, opens to oil");
            }
        }
        return new TinHole(
                named.name(),
                written.whole("holes", counted.group(1)),
                written.thread("hole " + named.name(), counted.group(2)),
                counted.group(2).endsWith("LH"),
                clamped_mm,
                ground.orElseThrow(() -> new IllegalArgumentException("hole " + named.name()
                        + ": say what the thread is cut in and how deep, like \"aluminium 16 mm deep\"")),
                behind);
    }

    private static TinHole.Material material(String words, String hole) {
        if (words.isBlank()) {
            return TinHole.Material.UNKNOWN;
        }
        return TinHole.Material.find(words)
                .orElseThrow(() -> new IllegalArgumentException(
                        "hole " + hole + ": '" + words + "' is no material known here; steel, cast iron or aluminium"));
    }
}
