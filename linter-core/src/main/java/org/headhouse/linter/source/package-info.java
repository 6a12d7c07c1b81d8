/**
 * From bytes to text: decoding, lines, positions and regions.
 *
 * <p>Nothing here knows of YAML, of rules or of results.
 */
@NullMarked
@Stable
package org.headhouse.linter.source;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
