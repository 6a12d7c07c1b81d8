/**
 * Drawings of a site's line as SVG: the wiring diagram, and the plots of its figures.
 *
 * <p>The way is from the model to a layout, which is records of parts with the place that each
 * takes, and from there to text; what decides where something stands writes no SVG, and what writes
 * SVG moves nothing. No HTML, no file and no rule may enter.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.diagram;

import org.jspecify.annotations.NullMarked;
