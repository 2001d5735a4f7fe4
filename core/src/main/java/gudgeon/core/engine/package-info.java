/**
 * What an engine <em>is</em>: parts, joints between parts, circuits through parts, zones where a person stands, ready
 * operations that must come first, features that are measured, and the checks of the way back. Immutable, without any
 * notion of what has happened to one engine, and without any order of work: orders are computed elsewhere.
 *
 * <p>Every list keeps the order of the engine file. The meaning of "moved", "free" and "reached" is in docs/planning.md.
 */
@NullMarked
package gudgeon.core.engine;

import org.jspecify.annotations.NullMarked;
