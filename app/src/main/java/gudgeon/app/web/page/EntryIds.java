package gudgeon.app.web.page;

import java.security.SecureRandom;
import java.util.UUID;

/**
 * Names for entries that a form may make: every form carries one in the field {@value #FIELD}, so that sending it twice is
 * harmless. UUIDs of version 7: time first, then chance (RFC 9562, section 5.7).
 */
public final class EntryIds {
    /** The form field. */
    public static final String FIELD = "entry";

    private static final SecureRandom CHANCE = new SecureRandom();

    private EntryIds() {}

    /** A new name. */
    public static UUID next() {
        return at(System.currentTimeMillis(), CHANCE.nextLong(), CHANCE.nextLong());
    }

    static UUID at(long millis, long chanceA, long chanceB) {
        long high = (millis << 16) | 0x7000L | (chanceA & 0x0FFFL);
        long low = (chanceB & 0x3FFF_FFFF_FFFF_FFFFL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low);
    }
}
