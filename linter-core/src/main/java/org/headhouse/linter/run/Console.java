package org.headhouse.linter.run;

import org.headhouse.linter.result.Level;

/**
 * Where the lines of a run go; their level says how grave it is what they tell. A line may have the
 * name of a file in it, which may hold anything: whoever prints it makes it printable.
 */
public interface Console {
  /** A line about the sites: results, and their summary. */
  void found(Level level, String line);

  /** A line about the run itself: what it reads and writes, and what is in its way. */
  void tell(Level level, String line);
}
