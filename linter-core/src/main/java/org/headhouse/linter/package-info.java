/** The façade that an embedding program uses, and nothing else. */
@NullMarked
@Stable
package org.headhouse.linter;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
