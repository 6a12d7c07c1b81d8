/** What a segment carries. */
@NullMarked
package org.headhouse.linter.rules.segment;

import org.jspecify.annotations.NullMarked;
