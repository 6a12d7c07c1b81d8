/**
 * Whether a unit can reach the line at all.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.module;

import org.jspecify.annotations.NullMarked;
