/**
 * The record of the visit on which a line was proved.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.commissioning;

import org.jspecify.annotations.NullMarked;
