/**
 * The server addresses of the units on a line.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.address;

import org.jspecify.annotations.NullMarked;
