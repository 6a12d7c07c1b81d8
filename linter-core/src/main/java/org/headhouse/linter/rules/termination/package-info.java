/** The two terminators of each segment. */
@NullMarked
package org.headhouse.linter.rules.termination;

import org.jspecify.annotations.NullMarked;
