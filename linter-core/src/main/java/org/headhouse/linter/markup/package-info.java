/**
 * Writes XML: which characters it can hold, and how they are escaped.
 *
 * <p>Nothing here knows of sites, of results or of any vocabulary of elements.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.markup;

import org.jspecify.annotations.NullMarked;
