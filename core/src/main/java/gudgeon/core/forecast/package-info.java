/**
 * How long will it take, and how sure is that? Minutes of one person's work as distributions: log-normal, with a separate tail
 * for what is seized; sums of them, independent and fully dependent; and the person's pace, learned from what was timed.
 *
 * <p>It knows minutes and nothing else: no engine, no clock, no dates. It does not draw lots: sums are worked out on a grid
 * whose error is stated ({@link gudgeon.core.forecast.TimeSpread}). The meaning is docs/sessions.md.
 */
@NullMarked
package gudgeon.core.forecast;

import org.jspecify.annotations.NullMarked;
