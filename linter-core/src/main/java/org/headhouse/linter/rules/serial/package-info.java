/**
 * The serial settings of the line.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.serial;

import org.jspecify.annotations.NullMarked;
