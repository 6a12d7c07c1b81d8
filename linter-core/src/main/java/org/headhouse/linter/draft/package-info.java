/**
 * From a list of units, as a spreadsheet saves it, to the text of a site definition, or to what it
 * changes in one that is there.
 *
 * <p>Pure: bytes and settings in, text or faults out. What a list does not say is left out or
 * marked in the text, never made up. No rules are known here; the text is checked like any other.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.draft;

import org.jspecify.annotations.NullMarked;
