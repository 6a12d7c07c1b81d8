/**
 * The figures of one site: its settings put into the formulas of {@code line}.
 *
 * <p>No rule is used here, and no wording but that of figures and of what would change them. What
 * is missing or not understood in a site is null.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.figures;

import org.jspecify.annotations.NullMarked;
