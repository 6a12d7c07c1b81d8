/**
 * From a list that was filled in on a visit, as a spreadsheet saves it, to the record of that visit
 * in the text of a site.
 *
 * <p>Pure: bytes in, bytes or faults out. A blank is nothing that was seen, and what can be read in
 * two ways is asked about. A record is added to; what it has is never changed, and the stage of the
 * site neither. No rules are known here: what values are worth is the check's to say.
 */
@NullMarked
@Internal
package org.headhouse.linter.visit;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
