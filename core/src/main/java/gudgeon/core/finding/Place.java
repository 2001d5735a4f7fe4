package gudgeon.core.finding;

/** What a fault or a finding belongs to. */
public enum Place {
    /** One cylinder. */
    CYLINDER,
    /** Two cylinders side by side in one bank. */
    NEIGHBOURS,
    /** All cylinders of one bank. */
    BANK,
    /** The engine as a whole. */
    ENGINE
}
