/** What is landed on the line terminals of each unit. */
@NullMarked
package org.headhouse.linter.rules.conductors;

import org.jspecify.annotations.NullMarked;
