/** What a line needs of its head unit. */
@NullMarked
@Internal
package org.headhouse.linter.rules.head;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
