/** Branches from the trunk to a unit. */
@NullMarked
package org.headhouse.linter.rules.stub;

import org.jspecify.annotations.NullMarked;
