/**
 * The firmware of units.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.firmware;

import org.jspecify.annotations.NullMarked;
