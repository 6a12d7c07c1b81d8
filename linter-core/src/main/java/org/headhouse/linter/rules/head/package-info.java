/** What a line needs of its head unit. */
@NullMarked
package org.headhouse.linter.rules.head;

import org.jspecify.annotations.NullMarked;
