/**
 * The cable of the trunk.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.cable;

import org.jspecify.annotations.NullMarked;
