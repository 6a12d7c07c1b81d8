/**
 * From bytes to text: decoding, lines, positions and regions.
 *
 * <p>Nothing here knows of YAML, of rules or of results.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.source;

import org.jspecify.annotations.NullMarked;
