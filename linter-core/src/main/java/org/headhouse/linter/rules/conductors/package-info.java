/** What is landed on the line terminals of each item. */
@NullMarked
@Internal
package org.headhouse.linter.rules.conductors;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
