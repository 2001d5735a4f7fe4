package gudgeon.core.geometry;

/** Refusals of arguments, each naming the value and what would be right. */
final class Guard {
    private Guard() {}

    static void finite(String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + shown(value, unit) + "; a finite number is needed.");
        }
    }

    static void positive(String what, double value, String unit) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + shown(value, unit) + "; it must be above 0.");
        }
    }

    static void notNegative(String what, double value, String unit) {
        if (!(value >= 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + shown(value, unit) + "; it must be 0 or more.");
        }
    }

    static void between(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    what + shown(value, unit) + "; it must lie between " + plain(low) + " and " + plain(high) + ".");
        }
    }

    private static String shown(double value, String unit) {
        return ": " + plain(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? String.valueOf((long) value) : String.valueOf(value);
    }
}
