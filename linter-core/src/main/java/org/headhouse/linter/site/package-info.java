/**
 * The read-only model of a site and of the types of device, each value with its place.
 *
 * <p>The model says what is written and what follows from it directly, such as the segments of a
 * chain. What is right or wrong is for rules; what can be computed of the line is for {@code line}.
 */
@NullMarked
@Stable
package org.headhouse.linter.site;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
