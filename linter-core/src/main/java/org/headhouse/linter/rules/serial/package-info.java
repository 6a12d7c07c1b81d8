/** The serial settings of the line. */
@NullMarked
package org.headhouse.linter.rules.serial;

import org.jspecify.annotations.NullMarked;
