package gudgeon.app.desk;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;

/** Which of the known words somebody may have meant. */
final class Nearest {
    private static final int MOST = 3;
    private static final int SHORTEST_PART = 3;

    /** Ranks: a part of a word comes after a whole one, words in another order or with letters amiss count only when nothing is nearer. */
    private static final int INSIDE_A_WORD = 50;

    private static final int BY_WORD = 300;

    private Nearest() {}

    /** At most three known words near to the given one, nearest first; empty when none is near. */
    static List<String> to(String word, Collection<String> known) {
        return among(word, known.stream().distinct().toList(), Stream::of).stream()
                .limit(MOST)
                .toList();
    }

    /**
     * The things one of whose words is near to the given one, nearest first; of equally near ones the first given.
     *
     * @param words all that a thing is called
     */
    static <T> List<T> among(String word, List<T> things, Function<T, Stream<String>> words) {
        String wanted = plain(word);
        Map<T, Integer> ranks = new LinkedHashMap<>();
        for (T thing : things) {
            words.apply(thing)
                    .map(own -> rank(wanted, plain(own)))
                    .flatMapToInt(OptionalInt::stream)
                    .min()
                    .ifPresent(rank -> ranks.put(thing, rank));
        }
        boolean close = ranks.values().stream().anyMatch(rank -> rank < BY_WORD);
        return ranks.entrySet().stream()
                .filter(ranked -> !close || ranked.getValue() < BY_WORD)
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** How far a candidate is; empty when it is not near. A few letters amiss come before a part of a longer name. */
    private static OptionalInt rank(String wanted, String candidate) {
        int distance = distance(wanted, candidate);
        if (wanted.length() >= SHORTEST_PART && candidate.contains(wanted)) {
            int inside = ("-" + candidate).contains("-" + wanted) ? 0 : INSIDE_A_WORD;
            return OptionalInt.of(Math.min(distance, 2) * 100 + distance + inside);
        }
        if (distance <= Math.max(1, wanted.length() / 3)) {
            return OptionalInt.of(distance * 100);
        }
        return byWord(wanted, candidate);
    }

    /** Whether every word that is wanted is, or is nearly, one of the candidate's words, in whatever order. */
    private static OptionalInt byWord(String wanted, String candidate) {
        List<String> own = List.of(candidate.split("-", -1));
        int sum = BY_WORD + own.size();
        for (String word : wanted.split("-", -1)) {
            OptionalInt least = own.stream()
                    .mapToInt(one -> word.length() >= SHORTEST_PART && one.startsWith(word) ? 0 : distance(word, one))
                    .min();
            if (least.isEmpty() || least.getAsInt() > (word.length() < SHORTEST_PART ? 0 : Math.max(1, word.length() / 4))) {
                return OptionalInt.empty();
            }
            sum += least.getAsInt() * 100;
        }
        return OptionalInt.of(sum);
    }

    /** A word without regard to case and to how its parts are joined. */
    static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Least number of letters put in, left out, exchanged or swapped with their neighbour. Cost: product of the lengths. */
    static int distance(String a, String b) {
        int[][] least = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                least[i][j] = i == 0 || j == 0 ? i + j : step(a, b, i, j, least);
            }
        }
        return least[a.length()][b.length()];
    }

    private static int step(String a, String b, int i, int j, int[][] least) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int best = Math.min(least[i - 1][j - 1] + (same ? 0 : 1), Math.min(least[i - 1][j], least[i][j - 1]) + 1);
        if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
            best = Math.min(best, least[i - 2][j - 2] + 1);
        }
        return best;
    }
}
