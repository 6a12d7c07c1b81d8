package org.headhouse.linter.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;

/** The parts that a site's file consists of, such as its line, its chain and its record. */
final class MainParts {
  private MainParts() {}

  /**
   * Whether each of them is known. A misspelt record is read as none, and of a key that is written
   * twice only one is read.
   *
   * @param yaml what is wrong with the file as YAML
   * @param schema what the schema found
   */
  static boolean areKnown(Node root, List<Finding> yaml, List<Finding> schema) {
    if ((yaml.isEmpty() && schema.isEmpty()) || !(root instanceof Mapping parts)) {
      return true;
    }
    Set<Region> keys = new HashSet<>();
    parts.entries().forEach(entry -> keys.add(entry.key().region()));
    return yaml.isEmpty()
        && schema.stream().noneMatch(finding -> keys.contains(finding.place().region()));
  }
}
