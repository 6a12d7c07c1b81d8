/** Where the weather station is wired. */
@NullMarked
package org.headhouse.linter.rules.station;

import org.jspecify.annotations.NullMarked;
