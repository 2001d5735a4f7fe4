package gudgeon.core.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The part of the fold that knows what was measured. */
final class GaugingFold {
    private final List<Facts.ReadingAt> readings = new ArrayList<>();
    private final Map<String, Integer> renewed = new LinkedHashMap<>();
    private final Map<String, Facts.InstrumentAt> instruments = new LinkedHashMap<>();
    private final Map<String, Facts.CleanedAt> cleaned = new LinkedHashMap<>();
    private int edition = 2017;

    void add(Entry entry, Gauging gauging) {
        switch (gauging) {
            case Gauging.ReadingTaken reading ->
                readings.add(
                        new Facts.ReadingAt(entry.id(), reading, entry.stamp().at()));
            case Gauging.InstrumentDescribed instrument ->
                instruments.put(
                        instrument.instrument(),
                        new Facts.InstrumentAt(instrument, entry.stamp().at()));
            case Gauging.Cleaned part ->
                cleaned.put(part.part(), new Facts.CleanedAt(part, entry.stamp().at(), readings.size()));
            case Gauging.EditionKept kept -> edition = kept.year();
        }
    }

    /** A new item has come: what was read before does not judge it, and it has to be cleaned. */
    void renewed(String part) {
        renewed.put(part, readings.size());
        cleaned.remove(part);
    }

    Facts.Gauged gauged() {
        return new Facts.Gauged(readings, renewed, instruments, cleaned, edition);
    }
}
