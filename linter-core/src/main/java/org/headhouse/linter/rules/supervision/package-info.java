/** What the supervising software lists and reaches. */
@NullMarked
package org.headhouse.linter.rules.supervision;

import org.jspecify.annotations.NullMarked;
