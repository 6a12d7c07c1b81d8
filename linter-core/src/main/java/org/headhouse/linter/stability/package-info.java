/** What an embedding program may count on. */
@NullMarked
@Stable
package org.headhouse.linter.stability;

import org.jspecify.annotations.NullMarked;
