/** Devices on the pair that are no units. */
@NullMarked
@Internal
package org.headhouse.linter.rules.equipment;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
