/**
 * From text to a located tree: every node has its region.
 *
 * <p>Nothing here knows what a site is. The tree is built from the parser's events: the library's
 * own tree would be a second one, without aliases and duplicate keys.
 */
@NullMarked
@Internal
package org.headhouse.linter.yaml;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
