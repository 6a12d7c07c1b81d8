/**
 * The published JSON Schemas, and their errors in the words of the trade.
 *
 * <p>A schema is loaded only when a file is in doubt: loading one costs more than checking hundreds
 * of clean files.
 */
@NullMarked
@Internal
package org.headhouse.linter.schema;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
