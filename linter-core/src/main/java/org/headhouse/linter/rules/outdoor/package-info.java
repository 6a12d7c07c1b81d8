/** Where units take the outdoor readings from, and what they do without them. */
@NullMarked
@Internal
package org.headhouse.linter.rules.outdoor;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
