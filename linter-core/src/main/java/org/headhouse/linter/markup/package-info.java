/**
 * Writes XML: which characters it can hold, and how they are escaped.
 *
 * <p>Nothing here knows of sites, of results or of any vocabulary of elements.
 */
@NullMarked
@Internal
package org.headhouse.linter.markup;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
