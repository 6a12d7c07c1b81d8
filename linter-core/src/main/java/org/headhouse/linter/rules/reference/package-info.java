/** Names that stand for something written elsewhere. */
@NullMarked
@Internal
package org.headhouse.linter.rules.reference;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
