package gudgeon.app.desk;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Which of the known words somebody may have meant. */
final class Nearest {
    private static final int MOST = 3;

    private Nearest() {}

    /** At most three known words near to the given one, nearest first; empty when none is near. */
    static List<String> to(String word, Collection<String> known) {
        String wanted = plain(word);
        return known.stream()
                .distinct()
                .filter(candidate -> isNear(wanted, plain(candidate)))
                .sorted(Comparator.comparingInt((String candidate) -> rank(wanted, plain(candidate)))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList();
    }

    private static boolean isNear(String wanted, String candidate) {
        return holds(candidate, wanted) || distance(wanted, candidate) <= Math.max(1, wanted.length() / 3);
    }

    private static int rank(String wanted, String candidate) {
        int distance = distance(wanted, candidate);
        return holds(candidate, wanted) ? Math.min(distance, 2) * 100 + distance : distance * 100;
    }

    private static boolean holds(String candidate, String wanted) {
        return wanted.length() >= 3 && candidate.contains(wanted);
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
