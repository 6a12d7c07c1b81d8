/**
 * Drawings of a site's line as SVG: the wiring diagram, and the plots of its figures.
 *
 * <p>The model becomes a layout, which is records of parts with their places, and the layout
 * becomes text: what decides on places writes no SVG, and what writes SVG moves nothing. No HTML,
 * file or rule is used here.
 */
@NullMarked
@Internal
package org.headhouse.linter.diagram;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
