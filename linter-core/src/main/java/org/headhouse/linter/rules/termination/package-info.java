/**
 * The two terminators of each segment.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.termination;

import org.jspecify.annotations.NullMarked;
