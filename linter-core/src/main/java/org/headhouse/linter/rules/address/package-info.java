/** The server addresses of the units on a line. */
@NullMarked
@Internal
package org.headhouse.linter.rules.address;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
