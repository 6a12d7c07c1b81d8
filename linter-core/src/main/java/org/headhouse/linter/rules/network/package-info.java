/** The Ethernet settings of units. */
@NullMarked
@Internal
package org.headhouse.linter.rules.network;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
