/** What goes over the line, and how much of its time that takes. */
@NullMarked
@Internal
package org.headhouse.linter.rules.traffic;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
