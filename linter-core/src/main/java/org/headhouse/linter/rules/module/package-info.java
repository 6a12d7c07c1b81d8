/** Whether a unit can reach the line at all. */
@NullMarked
@Internal
package org.headhouse.linter.rules.module;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
