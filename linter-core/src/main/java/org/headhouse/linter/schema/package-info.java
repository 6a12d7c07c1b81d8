/**
 * The published JSON Schemas, and their errors in the words of the trade.
 *
 * <p>A schema is loaded only when a file is in doubt: loading one costs more than checking hundreds
 * of clean files.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.schema;

import org.jspecify.annotations.NullMarked;
