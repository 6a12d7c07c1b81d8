/** The cable of the trunk. */
@NullMarked
@Internal
package org.headhouse.linter.rules.cable;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
