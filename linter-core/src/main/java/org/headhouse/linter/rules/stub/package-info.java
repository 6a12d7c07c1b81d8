/** Branches from the trunk to a unit. */
@NullMarked
@Internal
package org.headhouse.linter.rules.stub;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
