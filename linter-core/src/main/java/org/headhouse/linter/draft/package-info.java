/**
 * From a list of units, as a spreadsheet saves it, to the text of a site definition, or to what it
 * changes in one that is there.
 *
 * <p>Pure: bytes and settings in, text or faults out. What a list does not say is left out or
 * marked in the text, never made up. No rules are known here; the text is checked like any other.
 */
@NullMarked
@Stable
package org.headhouse.linter.draft;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
