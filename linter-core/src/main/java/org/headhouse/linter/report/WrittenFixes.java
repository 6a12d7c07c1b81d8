package org.headhouse.linter.report;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Result;

/**
 * Which fixes a report has already. One that mends many results, such as numbering all units anew,
 * is written with the first of them, else the report would grow with their square.
 */
final class WrittenFixes {
  private final Set<Fix> ofOpenResults = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Set<Fix> ofOthers = Collections.newSetFromMap(new IdentityHashMap<>());

  /** Whether a fix belongs to a result: the first of those that are open, or of the others. */
  boolean isFirst(Fix fix, Result result) {
    return (result.suppressed() || result.known() ? ofOthers : ofOpenResults).add(fix);
  }
}
