/** Published examples of selective disassembly, computed from data in a folder. */
@NullMarked
package gudgeon.bench.selective;

import org.jspecify.annotations.NullMarked;
