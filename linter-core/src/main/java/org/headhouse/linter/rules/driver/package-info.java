/** What the line drivers work into. */
@NullMarked
@Internal
package org.headhouse.linter.rules.driver;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
