/** Runs of cable between items. */
@NullMarked
package org.headhouse.linter.rules.run;

import org.jspecify.annotations.NullMarked;
