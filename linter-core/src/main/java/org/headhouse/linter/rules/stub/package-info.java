/**
 * Branches from the trunk to a unit.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.stub;

import org.jspecify.annotations.NullMarked;
