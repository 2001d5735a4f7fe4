package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.core.book.Build;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Fault;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Entries on disk: every kind comes back as it was, newer ones are kept, damage is told. */
class EntryJsonTest {
    private static final UUID ID = UUID.fromString("019a0000-0000-7000-8000-000000000001");

    private static Entry entry(gudgeon.core.book.Body body) {
        Entry.Stamp stamp = new Entry.Stamp(OffsetDateTime.parse("2026-10-03T09:00:00+01:00"), "Ann", "phone", "s1");
        return Entry.of(ID, "job", stamp, body).numbered(3);
    }

    @Test
    void aBodyComesBackAsItWas() {
        List.of(
                        new Setup.TargetSet(List.of("head"), List.of(), List.of("j"), List.of()),
                        new Setup.EngineCorrected(List.of(new Setup.Patch("joints/a", "", "name: \"x\"\n"))),
                        new Strip.AsFound("j", 3, List.of(new Strip.Piece(1, "M8x1.25", 25.5, "top")), "4", "one long"),
                        new Fault.Rescue("j", List.of("j/1"), "soak", 2.5, Fault.Outcome.DRILLED),
                        new Build.AngleTurned("j", 2, List.of("j/1")),
                        new Word.Withdrawn(ID, ""))
                .forEach(body ->
                        assertThat(EntryJson.read(EntryJson.write(entry(body)))).isEqualTo(entry(body)));
        Entry replacing = entry(new Word.Note("a")).replacing(ID);
        assertThat(EntryJson.read(EntryJson.write(replacing)).replaces()).isEqualTo(Optional.of(ID));
    }

    /** The kinds are what stands in every store that was ever written: one may be added, none renamed. */
    @Test
    void theKindsKeepTheirNames() {
        assertThat(EntryJson.allKinds())
                .contains(
                        "job opened",
                        "settings",
                        "engine adopted",
                        "engine corrected",
                        "target set",
                        "will not come",
                        "comes after all",
                        "session started",
                        "session ended",
                        "operation started",
                        "operation done",
                        "put back",
                        "removed",
                        "as found",
                        "routing",
                        "trouble",
                        "rescue",
                        "condition",
                        "bag made",
                        "bag opened",
                        "bag moved",
                        "part moved",
                        "marked",
                        "renewed",
                        "covered",
                        "uncovered",
                        "rag in",
                        "rag out",
                        "aid fitted",
                        "aid removed",
                        "counted",
                        "ordered",
                        "received",
                        "drained",
                        "filled",
                        "oiled",
                        "step built",
                        "stage reached",
                        "angle turned",
                        "interrupted",
                        "started again",
                        "turning force",
                        "check signed",
                        "licensed done",
                        "note",
                        "photo",
                        "withdrawn");
    }

    @Test
    void whatANewerVersionWroteIsKept() {
        String newer = EntryJson.write(entry(new Word.Note("a")))
                .replace("\"type\":\"note\"", "\"type\":\"hologram\"")
                .replace("{\"text\":\"a\"}", "{\"layers\":[1,2]}");
        Entry read = EntryJson.read(newer);
        assertThat(read.body()).isEqualTo(new Word.Newer("hologram", "{\"layers\":[1,2]}"));
        assertThat(EntryJson.write(read)).isEqualTo(newer);
    }

    @Test
    void aKnownKindWithMoreInItIsKeptOnlyFromANewerSchema() {
        String more =
                EntryJson.write(entry(new Word.Note("a"))).replace("{\"text\":\"a\"}", "{\"text\":\"a\",\"x\":1}");
        assertThatThrownBy(() -> EntryJson.read(more)).isInstanceOf(EntryJson.Unreadable.class);
        assertThat(EntryJson.read(more.replace("\"schema\":1", "\"schema\":2")).body())
                .isInstanceOf(Word.Newer.class);
    }

    @Test
    void damageIsTold() {
        String whole = EntryJson.write(entry(new Word.Note("a")));
        for (String damaged : List.of(
                "",
                "{}",
                "[]",
                whole.substring(0, whole.length() / 2),
                whole.replace("2026-10-03", "yesterday"),
                whole.replace("\"text\":\"a\"", "\"text\":null"),
                whole.replace("019a0000", "x"))) {
            assertThatThrownBy(() -> EntryJson.read(damaged)).as(damaged).isInstanceOf(EntryJson.Unreadable.class);
        }
    }
}
