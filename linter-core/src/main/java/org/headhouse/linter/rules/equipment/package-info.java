/**
 * Devices on the pair that are no units.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.equipment;

import org.jspecify.annotations.NullMarked;
