/**
 * What the physics says of one site: the model's settings given to the formulas of {@code line},
 * and the figures by site.
 *
 * <p>No rule may enter, and no wording but that of figures and of what would change them. What is
 * missing or not understood in a site is null here.
 */
@NullMarked
package org.headhouse.linter.figures;

import org.jspecify.annotations.NullMarked;
