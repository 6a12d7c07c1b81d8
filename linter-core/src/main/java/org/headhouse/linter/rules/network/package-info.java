/** The Ethernet settings of units. */
@NullMarked
package org.headhouse.linter.rules.network;

import org.jspecify.annotations.NullMarked;
