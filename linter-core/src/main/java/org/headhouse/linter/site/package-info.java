/**
 * The read-only model of a site and of the types of device, each value with its place.
 *
 * <p>The model says what is written and what follows from it directly, such as the segments of a
 * chain. What is right or wrong is for rules; what can be computed of the line is for {@code line}.
 *
 * <p>Stable: names and meanings stay within a major version.
 */
@NullMarked
package org.headhouse.linter.site;

import org.jspecify.annotations.NullMarked;
