package gudgeon.core.book;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * One thing that happened, or one thing said about it.
 *
 * @param id made on the device that wrote it (version 7), so that sending it twice is harmless
 * @param schema version of the body's form; see {@link #SCHEMA}
 * @param job the job it belongs to
 * @param seq its place in the book, from 1, given by the store; 0 while it waits to be stored
 * @param stamp when and by whom
 * @param about what it is about, beside what the body names; empty for most
 * @param replaces an earlier entry that this one takes the place of; empty for most
 * @param body what happened
 */
public record Entry(
        UUID id, int schema, String job, long seq, Stamp stamp, List<Ref> about, Optional<UUID> replaces, Body body) {
    /** The version that this program writes. */
    public static final int SCHEMA = 1;

    public Entry {
        about = List.copyOf(about);
        if (job.isBlank()) {
            throw new IllegalArgumentException("an entry belongs to a job");
        }
        if (seq < 0 || schema < 1) {
            throw new IllegalArgumentException("a place in the book is 1 or more, not " + seq + " of schema " + schema);
        }
    }

    /**
     * When and by whom.
     *
     * @param at when it happened, with the offset of the clock that said so
     * @param by who wrote it; empty when not said
     * @param device on what; empty when not said
     * @param session id of the working session; empty outside of one
     */
    public record Stamp(OffsetDateTime at, String by, String device, String session) {
        /** A time, and nobody in particular. */
        public static Stamp at(OffsetDateTime at) {
            return new Stamp(at, "", "", "");
        }
    }

    /** An entry about nothing but what its body names, still to be stored. */
    public static Entry of(UUID id, String job, Stamp stamp, Body body) {
        return new Entry(id, SCHEMA, job, 0, stamp, List.of(), Optional.empty(), body);
    }

    /** The same with its place in the book. */
    public Entry numbered(long place) {
        return new Entry(id, schema, job, place, stamp, about, replaces, body);
    }

    /** The same about these things too. */
    public Entry about(List<Ref> things) {
        return new Entry(id, schema, job, seq, stamp, things, replaces, body);
    }

    /** The same in place of an earlier entry. */
    public Entry replacing(UUID earlier) {
        return new Entry(id, schema, job, seq, stamp, about, Optional.of(earlier), body);
    }

    /** Whether two entries say the same, wherever they stand in the book. */
    public boolean saysTheSame(Entry other) {
        return numbered(0).equals(other.numbered(0));
    }
}
