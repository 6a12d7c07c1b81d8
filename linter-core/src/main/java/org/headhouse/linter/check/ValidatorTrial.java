package org.headhouse.linter.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaCheck;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/**
 * Whether the schema's validator works with the libraries that a program has. It is loaded where a
 * file has a fault, so without a trial the first faulty site would tell.
 */
public final class ValidatorTrial {
  private static final byte[] FAULTY = "format: none\n".getBytes(UTF_8);

  /** Made once: the libraries stay the same while the program runs. */
  private static final @Nullable Throwable FAILURE = failure();

  private ValidatorTrial() {}

  /**
   * Requires that the validator works.
   *
   * @throws IllegalStateException where it does not
   */
  public static void require() {
    if (FAILURE != null) {
      throw new IllegalStateException(
          "the class path has no JSON Schema validator that works here ("
              + FAILURE
              + "): json-schema-validator 2.0 and Jackson 2.15 or later are needed",
          FAILURE);
    }
  }

  private static @Nullable Throwable failure() {
    try {
      Node.Valued root = SiteDocument.read("trial.yaml", FAULTY, Limits.DEFAULT).root();
      if (root == null || new SchemaCheck(FileKind.SITE).explain(root).isEmpty()) {
        return new IllegalStateException("it finds no fault in a faulty site");
      }
      return null;
    } catch (RuntimeException | LinkageError unusable) {
      return unusable;
    }
  }
}
