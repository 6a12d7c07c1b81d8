/** What the units receive of each other. */
@NullMarked
@Internal
package org.headhouse.linter.rules.signal;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
