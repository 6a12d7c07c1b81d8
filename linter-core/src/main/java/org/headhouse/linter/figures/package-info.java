/**
 * What the physics says of one site: the model's settings given to the formulas of {@code line},
 * and the figures by site.
 *
 * <p>No rule may enter, and no wording but that of figures and of what would change them. What is
 * missing or not understood in a site is null here.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.figures;

import org.jspecify.annotations.NullMarked;
