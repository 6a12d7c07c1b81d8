/**
 * What came of files in an earlier run, kept so that a file that did not change is not checked
 * again.
 *
 * <p>Nothing here knows what is kept but its form; whatever is damaged, or was made under other
 * circumstances, is as good as nothing.
 *
 * <p>Stable: names and meanings stay within a major version; what is marked {@link
 * org.headhouse.linter.stability.Internal} is not meant.
 */
@NullMarked
package org.headhouse.linter.cache;

import org.jspecify.annotations.NullMarked;
