/**
 * The names that people know the units by.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.name;

import org.jspecify.annotations.NullMarked;
