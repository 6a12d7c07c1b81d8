/** Where the weather station is wired. */
@NullMarked
@Internal
package org.headhouse.linter.rules.station;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
