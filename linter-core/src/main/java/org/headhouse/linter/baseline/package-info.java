/**
 * Results that were there before: kept in a file, and compared with those of a later check.
 *
 * <p>Lines and regions have no place here, since they change; who fails on what is not known
 * either.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.baseline;

import org.jspecify.annotations.NullMarked;
