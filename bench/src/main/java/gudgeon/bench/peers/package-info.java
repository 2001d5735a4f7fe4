/** General solvers on the same numbers as the order search; their models are described in bench/README.md. */
@NullMarked
package gudgeon.bench.peers;

import org.jspecify.annotations.NullMarked;
