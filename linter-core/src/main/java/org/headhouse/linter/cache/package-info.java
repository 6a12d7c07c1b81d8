/**
 * What came of files in an earlier run, kept so that a file that did not change is not checked
 * again.
 *
 * <p>What an outcome says is nothing to this package, only its form is; whatever is damaged, or was
 * made under other circumstances, is as good as nothing.
 *
 * <p>Stable: names and meanings stay within a major version; what is marked {@link
 * org.headhouse.linter.stability.Internal} is not meant.
 */
@NullMarked
package org.headhouse.linter.cache;

import org.jspecify.annotations.NullMarked;
