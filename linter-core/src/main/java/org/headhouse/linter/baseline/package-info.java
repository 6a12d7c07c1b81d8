/**
 * Results that were there before: kept in a file, and compared with those of a later check.
 *
 * <p>Lines and regions have no place here, since they change; who fails on what is not known
 * either.
 */
@NullMarked
@Stable
package org.headhouse.linter.baseline;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
