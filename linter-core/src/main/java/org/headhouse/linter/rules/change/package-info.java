/** How a line that is live may change; these rules need an earlier state of the site. */
@NullMarked
@Internal
package org.headhouse.linter.rules.change;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
