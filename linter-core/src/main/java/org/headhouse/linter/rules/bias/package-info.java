/** The bias of a segment. */
@NullMarked
package org.headhouse.linter.rules.bias;

import org.jspecify.annotations.NullMarked;
