/**
 * What is landed on the line terminals of each item.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.conductors;

import org.jspecify.annotations.NullMarked;
