package gudgeon.app.store;

import gudgeon.core.book.Entry;
import gudgeon.core.book.Strip;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;

/** A program of its own: adds entries to a store without end and prints each id once it was acknowledged. */
final class Appending {
    private Appending() {}

    public static void main(String[] args) {
        OffsetDateTime at = OffsetDateTime.parse("2026-10-03T09:00:00+01:00");
        try (SqliteStore store = SqliteStore.open(Path.of(args[0]))) {
            System.out.println("open");
            for (long n = Long.parseLong(args[1]); ; n++) {
                UUID id = new UUID(0x7000L, 0x8000_0000_0000_0000L | n);
                Entry entry = Entry.of(id, "job", Entry.Stamp.at(at), new Strip.OperationDone("joint-" + n, false, 0));
                store.add(List.of(entry));
                System.out.println(id);
            }
        }
    }
}
