/** The cable of the trunk. */
@NullMarked
package org.headhouse.linter.rules.cable;

import org.jspecify.annotations.NullMarked;
