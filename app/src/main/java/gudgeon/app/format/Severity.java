package gudgeon.app.format;

/** How grave a problem of a file is. */
public enum Severity {
    /** The file cannot be used. */
    FAULT,
    /** The file can be used, but an answer may be worse than it could be. */
    WARNING,
    /** Worth knowing; nothing need be done. */
    REMARK
}
