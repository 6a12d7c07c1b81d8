/**
 * Runs of cable between items.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.run;

import org.jspecify.annotations.NullMarked;
