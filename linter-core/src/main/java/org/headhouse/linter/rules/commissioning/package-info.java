/** The record of the visit on which a line was proved. */
@NullMarked
@Internal
package org.headhouse.linter.rules.commissioning;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
