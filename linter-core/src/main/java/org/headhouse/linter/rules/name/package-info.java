/** The names that people know the units by. */
@NullMarked
@Internal
package org.headhouse.linter.rules.name;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
