/**
 * What the supervising software lists and reaches.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.supervision;

import org.jspecify.annotations.NullMarked;
