/**
 * What a reading is worth, and what follows from it: instruments, corrections to 20 °C, budgets of uncertainty, verdicts
 * against limits, and the features derived from readings (bores, journals, clearances, flatness, roundness). Standards: ISO 1,
 * JCGM 100 and 101, ISO 14253-1. Decides nothing about money and knows no job.
 */
@NullMarked
package gudgeon.core.measuring;

import org.jspecify.annotations.NullMarked;
