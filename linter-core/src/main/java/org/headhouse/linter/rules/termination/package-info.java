/** The two terminators of each segment. */
@NullMarked
@Internal
package org.headhouse.linter.rules.termination;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
