/** What a segment carries. */
@NullMarked
@Internal
package org.headhouse.linter.rules.segment;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
