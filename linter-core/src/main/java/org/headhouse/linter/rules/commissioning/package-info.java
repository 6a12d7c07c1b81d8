/** The record of the visit on which a line was proved. */
@NullMarked
package org.headhouse.linter.rules.commissioning;

import org.jspecify.annotations.NullMarked;
