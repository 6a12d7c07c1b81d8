/**
 * The Ethernet settings of units.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.network;

import org.jspecify.annotations.NullMarked;
