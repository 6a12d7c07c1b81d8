/**
 * What the line drivers work into.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.driver;

import org.jspecify.annotations.NullMarked;
