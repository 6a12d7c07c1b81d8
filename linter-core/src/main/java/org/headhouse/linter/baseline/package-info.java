/**
 * What was found before: results kept in a file, and compared with those of a later check.
 *
 * <p>Files, lines and regions of results have no place here; who fails on what is not known either.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.baseline;

import org.jspecify.annotations.NullMarked;
