/**
 * The figures of one site: its settings put into the formulas of {@code line}.
 *
 * <p>No rule is used here, and no wording but that of figures and of what would change them. What
 * is missing or not understood in a site is null.
 */
@NullMarked
@Stable
package org.headhouse.linter.figures;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
