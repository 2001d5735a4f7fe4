package gudgeon.app.desk;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.UUID;
import java.util.function.Supplier;

/** Ids of entries: version 7 of RFC 9562, so that they sort by the time at which they were made. Source: [RFC9562] 5.7. */
final class EntryIds implements Supplier<UUID> {
    private static final long VARIANT_MASK = 0x3FFF_FFFF_FFFF_FFFFL;
    private static final long VARIANT = 0x8000_0000_0000_0000L;

    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    EntryIds(Clock clock) {
        this.clock = clock;
    }

    @Override
    public UUID get() {
        long millis = clock.millis() & 0xFFFF_FFFF_FFFFL;
        long high = (millis << 16) | 0x7000L | (random.nextInt() & 0x0FFFL);
        return new UUID(high, (random.nextLong() & VARIANT_MASK) | VARIANT);
    }

    /** The id of a further entry of one stroke: the same again gives the same, so that sending twice stays harmless. */
    static UUID following(UUID first, int number) {
        long low = (first.getLeastSignificantBits() + number) & VARIANT_MASK;
        return new UUID(first.getMostSignificantBits(), low | (first.getLeastSignificantBits() & ~VARIANT_MASK));
    }
}
