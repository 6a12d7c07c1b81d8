/**
 * Where the weather station is wired.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.station;

import org.jspecify.annotations.NullMarked;
