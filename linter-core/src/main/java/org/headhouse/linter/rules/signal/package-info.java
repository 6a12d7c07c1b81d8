/** What the units receive of each other. */
@NullMarked
package org.headhouse.linter.rules.signal;

import org.jspecify.annotations.NullMarked;
