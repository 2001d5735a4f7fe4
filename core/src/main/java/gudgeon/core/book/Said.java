package gudgeon.core.book;

/** Guards of what is written into a book. */
final class Said {
    private Said() {}

    static void something(String text, String what) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is not empty");
        }
    }

    static void counts(int count, String what) {
        if (count < 0 || count > 10_000) {
            throw new IllegalArgumentException(what + " is from 0 to 10000, not " + count);
        }
    }

    static void litres(double litres) {
        if (!(litres >= 0 && litres <= 1000)) {
            throw new IllegalArgumentException("litres are from 0 to 1000, not " + litres);
        }
    }

    static void minutes(double minutes) {
        if (!(minutes >= 0 && minutes <= 100_000)) {
            throw new IllegalArgumentException("minutes are from 0 to 100000, not " + minutes);
        }
    }
}
