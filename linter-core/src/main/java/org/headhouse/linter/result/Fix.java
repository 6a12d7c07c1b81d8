package org.headhouse.linter.result;

import java.io.Serializable;
import java.util.List;

/**
 * How a result is mended in the file that it stands in.
 *
 * @param description an imperative sentence without a full stop
 * @param replacements in the order of the file, none over another; made all together or not at all
 */
public record Fix(FixKind kind, String description, List<Replacement> replacements)
    implements Serializable {

  public Fix {
    replacements = List.copyOf(replacements);
    if (replacements.isEmpty()) {
      throw new IllegalArgumentException("a fix that changes nothing");
    }
  }
}
