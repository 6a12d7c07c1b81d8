/** The firmware of units. */
@NullMarked
@Internal
package org.headhouse.linter.rules.firmware;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
