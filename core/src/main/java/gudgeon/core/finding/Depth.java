package gudgeon.core.finding;

/** How far an engine must be opened; each level includes those before it. */
public enum Depth {
    /** Nothing of the engine itself is opened. */
    NONE,
    /** Rocker, cam or timing covers off. */
    COVERS,
    /** Cylinder head off. */
    HEAD_OFF,
    /** Sump off, pistons or crankshaft out. */
    BOTTOM_END
}
