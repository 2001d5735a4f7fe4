package gudgeon.app.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** Numbers in words of the bench: times, masses, volumes, money, counts. */
public final class Figures {
    private Figures() {}

    /**
     * A time to the minute: "40 s" below a minute, "12 min", "2 h 05 min".
     *
     * @param seconds 0 or more
     */
    public static String time(long seconds) {
        if (seconds < 0) {
            throw new IllegalArgumentException("a time is 0 or more, not " + seconds + " s");
        }
        if (seconds < 60) {
            return seconds + " s";
        }
        long minutes = minutes(seconds);
        if (minutes < 60) {
            return minutes + " min";
        }
        return minutes % 60 == 0
                ? minutes / 60 + " h"
                : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }

    /** Whole minutes, rounded half up. */
    public static long minutes(long seconds) {
        return (seconds + 30) / 60;
    }

    /** A mass: whole grams below 100 g, one decimal below 10 kg, whole kilograms from there. */
    public static String mass(double kilograms) {
        if (kilograms < 0.0995) {
            return rounded(kilograms * 1000, 0) + " g";
        }
        return rounded(kilograms, kilograms < 9.95 ? 1 : 0) + " kg";
    }

    /** A volume with at most two decimals. */
    public static String volume(double litres) {
        return rounded(litres, 2) + " l";
    }

    /** An amount of money with two decimals, in the currency of the engine file. */
    public static String money(double amount) {
        return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    /** A number without trailing zeros. */
    public static String plain(double value) {
        return rounded(value, 3);
    }

    /** "1 bolt", "4 bolts". */
    public static String count(int count, String word) {
        return count + " " + (count == 1 ? word : plural(word));
    }

    /** The plural of a trade word. */
    public static String plural(String word) {
        if (word.equals("stud and nut")) {
            return "studs and nuts";
        }
        if (word.endsWith("s") && !word.endsWith("ss")) {
            return word;
        }
        if (word.endsWith("ss") || word.endsWith("x") || word.endsWith("ch") || word.endsWith("sh")) {
            return word + "es";
        }
        return word + "s";
    }

    /** "a", "a and b", "a, b and c"; words that have commas of their own are parted by semicolons. */
    public static String list(List<String> words) {
        int last = words.size() - 1;
        if (last < 1) {
            return String.join("", words);
        }
        if (words.subList(0, last).stream().anyMatch(word -> word.contains(", "))) {
            return String.join("; ", words);
        }
        return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** At most {@code most} words, then how many more there are. */
    public static String list(List<String> words, int most) {
        if (words.size() <= most) {
            return list(words);
        }
        return String.join(", ", words.subList(0, most)) + " and " + (words.size() - most) + " more";
    }

    /** Each text as a sentence: ends with one full stop. */
    static String sentences(List<String> texts) {
        return String.join(
                " ",
                texts.stream()
                        .map(text -> text.strip().endsWith(".") ? text.strip() : text.strip() + ".")
                        .toList());
    }

    private static String rounded(double value, int decimals) {
        BigDecimal decimal = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }
}
