package gudgeon.core.engine;

import java.util.List;

/**
 * How far an engine can be opened, in the terms of its parts: what must be off for that. A level includes those before it.
 *
 * @param depth how deep
 * @param parts ids of the parts that are off then; at least one
 */
public record Level(Depth depth, List<String> parts) {
    public Level {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("the level " + depth.word() + " names no part");
        }
    }

    /** From the outside inward. */
    public enum Depth {
        /** Rocker, cam or timing covers off. */
        COVERS("covers"),
        /** Cylinder head off. */
        HEAD_OFF("head-off"),
        /** Pistons or crankshaft out. */
        BOTTOM_END("bottom-end");

        private final String word;

        Depth(String word) {
            this.word = word;
        }

        /** As engine files write it. */
        public String word() {
            return word;
        }
    }
}
