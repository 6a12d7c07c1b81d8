/**
 * What differs between two states of a site, and the order of the field work that leads from one to
 * the other.
 *
 * <p>It compares models of sites, and knows neither files nor rules. How a change is told is for
 * {@code report}.
 */
@NullMarked
package org.headhouse.linter.change;

import org.jspecify.annotations.NullMarked;
