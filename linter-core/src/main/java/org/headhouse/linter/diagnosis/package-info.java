/**
 * What readings of a meter say of one site's line: the site given to the physics of faults, and the
 * faults that are left given the names of the site.
 *
 * <p>What is missing or not understood in a site is said, not guessed. No rule is used here, and no
 * text is laid out.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.diagnosis;

import org.jspecify.annotations.NullMarked;
