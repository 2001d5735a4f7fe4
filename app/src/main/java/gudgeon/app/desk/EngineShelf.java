package gudgeon.app.desk;

import gudgeon.app.format.EngineFile;
import gudgeon.app.format.Reading;
import gudgeon.app.format.ShippedEngines;
import gudgeon.core.engine.Engine;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The shipped engines, each read once. For many threads. */
public final class EngineShelf {
    private final Map<String, Engine> read = new ConcurrentHashMap<>();

    /** Ids of the engines on the shelf, sorted. */
    public List<String> ids() {
        return ShippedEngines.ids();
    }

    /** The engine of this id; empty when the shelf has none, or its file has faults. */
    public Optional<Engine> find(String id) {
        Engine known = read.get(id);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Engine> engine = ShippedEngines.find(id).flatMap(path -> switch (EngineFile.read(path)) {
            case Reading.Sound sound -> Optional.of(sound.engine());
            case Reading.Faulty faulty -> Optional.empty();
        });
        engine.ifPresent(sound -> read.put(id, sound));
        return engine;
    }

    /** Every engine on the shelf that can be read, by id. */
    public List<Engine> all() {
        return ids().stream().flatMap(id -> find(id).stream()).toList();
    }
}
