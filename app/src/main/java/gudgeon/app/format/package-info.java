/**
 * Files and machine-readable answers: reads engine files (YAML) into {@link gudgeon.core.engine.Engine} with every fault
 * placed by line and column, and writes the JSON documents. The exact meaning of every key is in docs/engine-file.md, the
 * published schema in schema/engine-1.schema.json.
 *
 * <p>Nothing here plans, and nothing here decides what an answer means; it reads, checks and writes. Reading never throws for
 * what stands in a file: a faulty file is a value, {@link gudgeon.app.format.Reading.Faulty}.
 */
@NullMarked
package gudgeon.app.format;

import org.jspecify.annotations.NullMarked;
