package gudgeon.core.book;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/** Books for tests: entries with counted ids, and random ones from a seed. */
final class Books {
    static final String JOB = "job";
    private static final OffsetDateTime START = OffsetDateTime.parse("2026-10-03T09:00:00+01:00");

    private Books() {}

    static UUID id(long number) {
        return new UUID(0x7000L, 0x8000_0000_0000_0000L | number);
    }

    static Entry entry(long seq, Body body) {
        return Entry.of(id(seq), JOB, Entry.Stamp.at(START.plusMinutes(seq)), body)
                .numbered(seq);
    }

    /** Entries numbered from 1. */
    static List<Entry> book(Body... bodies) {
        List<Entry> book = new ArrayList<>();
        for (Body body : bodies) {
            book.add(entry(book.size() + 1L, body));
        }
        return book;
    }

    /** A book of all sorts of entries, withdrawals among them, some of which make no sense. */
    static List<Entry> random(long seed, int size) {
        return random(seed, size, 5);
    }

    /** @param joints over how many joints it spreads; there are about as many bags */
    static List<Entry> random(long seed, int size, int joints) {
        Random random = new Random(seed);
        List<Entry> book = new ArrayList<>();
        for (int seq = 1; seq <= size; seq++) {
            book.add(entry(seq, body(random, seq, joints)));
        }
        return book;
    }

    private static Body body(Random random, int seq, int joints) {
        String joint = "joint-" + random.nextInt(joints);
        return switch (random.nextInt(18)) {
            case 0, 1, 2 -> new Strip.OperationDone(joint, random.nextBoolean(), random.nextInt(9));
            case 3 -> Strip.AsFound.counted(joint, random.nextInt(5), String.valueOf(random.nextInt(joints)));
            case 4 -> new Strip.Removed(List.of("part-" + joint), "shelf", random.nextBoolean());
            case 5 -> new Fault.Trouble(joint, Fault.Kind.SEIZED, List.of(), "");
            case 6 -> new Fault.Rescue(joint, List.of(), "soak", 5, Fault.Outcome.values()[random.nextInt(3)]);
            case 7 -> new Keeping.RagIn(joint, random.nextInt(3));
            case 8 -> new Keeping.RagOut(joint, random.nextInt(3));
            case 9 -> new Build.StepBuilt(joint + "/snug", List.of(), 2);
            case 10 -> new Build.AngleTurned(joint, 2, List.of(joint + "/" + random.nextInt(3)));
            case 11 -> new Strip.PutBack(joint);
            case 12 -> new Setup.WillNotCome(joint);
            case 13 -> new Keeping.Counted(String.valueOf(random.nextInt(joints)), random.nextInt(5));
            case 14 -> new Fluid.Drained("oil", 0.1, "can");
            case 15 -> new Build.StartedAgain(joint, "");
            case 16 -> new Keeping.BagMade(String.valueOf(random.nextInt(joints)), "odds", "shelf");
            default -> new Word.Withdrawn(id(1 + random.nextInt(seq)), "");
        };
    }
}
