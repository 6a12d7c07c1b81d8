/** The firmware of units. */
@NullMarked
package org.headhouse.linter.rules.firmware;

import org.jspecify.annotations.NullMarked;
