/** Runs of cable between items. */
@NullMarked
@Internal
package org.headhouse.linter.rules.run;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
