/**
 * Where books are kept. An entry is acknowledged only when it is durable. One file of SQLite; the port would serve another
 * database as well. JDBC is used here and nowhere else.
 */
@NullMarked
package gudgeon.app.store;

import org.jspecify.annotations.NullMarked;
