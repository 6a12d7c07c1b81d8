/**
 * What the units receive of each other.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.signal;

import org.jspecify.annotations.NullMarked;
