/**
 * What differs between two states of a site, and the order of the field work that leads from one to
 * the other.
 *
 * <p>It compares models of sites, and knows neither files nor rules. The words for a change are in
 * {@code report}.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not part of it.
 */
@NullMarked
package org.headhouse.linter.change;

import org.jspecify.annotations.NullMarked;
