package org.headhouse.linter.yaml;

import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * What could be read of a file.
 *
 * @param root the first document's node; null where the file cannot be read as YAML at all. A file
 *     without a document has an empty scalar
 * @param ambiguous plain values that a YAML 1.1 reader would read as something else, in the order
 *     of the file
 * @param findings what is wrong with the file as YAML
 */
public record Document(
    SourceText source, Node.@Nullable Valued root, List<Scalar> ambiguous, List<Finding> findings) {

  /** The same document with its root as another stage sees it. */
  public Document withRoot(Node.Valued other) {
    return other == root ? this : new Document(source, other, ambiguous, findings);
  }

  /**
   * The comments in the order of the file, found anew by each call; none where the file cannot be
   * read as YAML.
   */
  public List<Comment> comments() {
    return root == null ? List.of() : YamlReader.comments(source);
  }
}
