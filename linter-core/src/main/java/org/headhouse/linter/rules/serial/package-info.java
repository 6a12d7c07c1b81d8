/** The serial settings of the line. */
@NullMarked
@Internal
package org.headhouse.linter.rules.serial;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
