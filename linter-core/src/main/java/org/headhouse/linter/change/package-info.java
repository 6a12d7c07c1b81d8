/**
 * What differs between two states of a site, and the order of the field work that leads from one to
 * the other.
 *
 * <p>It compares models of sites, and knows neither files nor rules. The words for a change are in
 * {@code report}.
 */
@NullMarked
@Stable
package org.headhouse.linter.change;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
