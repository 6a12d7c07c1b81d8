/** Names that stand for something written elsewhere. */
@NullMarked
package org.headhouse.linter.rules.reference;

import org.jspecify.annotations.NullMarked;
