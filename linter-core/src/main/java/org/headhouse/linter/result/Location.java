package org.headhouse.linter.result;

import java.io.Serializable;
import java.util.function.Predicate;
import org.headhouse.linter.source.Region;

/**
 * A region of a file, with what is needed to show it when the file is no longer at hand.
 *
 * @param file how the file is called, with forward slashes
 * @param line the text of the region's first line, without its end, cut where it is very long
 */
public record Location(String file, Region region, String line) implements Serializable {

  /** The same location; in one of some files without the text of its line. */
  Location withoutLine(Predicate<String> files) {
    return files.test(file) ? new Location(file, region, "") : this;
  }
}
