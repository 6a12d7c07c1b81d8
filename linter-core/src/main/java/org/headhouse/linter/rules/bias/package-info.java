/** The bias of a segment. */
@NullMarked
@Internal
package org.headhouse.linter.rules.bias;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
