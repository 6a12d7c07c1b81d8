/**
 * What readings of a meter say of one site's line: the site given to the physics of faults, and the
 * faults that are left given the names of the site.
 *
 * <p>What is missing or not understood in a site is said, not guessed. No rule is used here, and no
 * text is laid out.
 */
@NullMarked
@Stable
package org.headhouse.linter.diagnosis;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
