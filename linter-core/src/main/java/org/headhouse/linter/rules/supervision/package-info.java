/** What the supervising software lists and reaches. */
@NullMarked
@Internal
package org.headhouse.linter.rules.supervision;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
