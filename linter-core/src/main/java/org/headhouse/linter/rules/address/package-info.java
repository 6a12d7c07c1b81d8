/** The server addresses of the units on a line. */
@NullMarked
package org.headhouse.linter.rules.address;

import org.jspecify.annotations.NullMarked;
