package org.headhouse.linter.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaCheck;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/**
 * Whether a check works with the libraries that a program has. Most of them are loaded where a file
 * has a fault, so without a trial the first faulty site would tell.
 */
public final class LibraryTrial {
  private static final String FAULTY = "format: none\n";

  /** Made once: the libraries stay the same while the program runs. */
  private static final LibraryTrial MADE = new LibraryTrial();

  private final @Nullable Throwable failure = failure();

  private LibraryTrial() {}

  /**
   * Requires that it does.
   *
   * @throws IllegalStateException where it does not
   */
  public static void require() {
    Throwable failure = MADE.failure;
    if (failure != null) {
      throw new IllegalStateException(
          "the linter does not work with the libraries of this program ("
              + failure
              + "): it needs SnakeYAML 2, json-schema-validator 2 and Jackson 2 from 2.15 on,"
              + " and on the module path the option --add-modules ALL-MODULE-PATH",
          failure);
    }
  }

  private static @Nullable Throwable failure() {
    try {
      Node.Valued root =
          SiteDocument.read("trial.yaml", FAULTY.getBytes(UTF_8), Limits.DEFAULT).root();
      if (root == null || new SchemaCheck(FileKind.SITE).explain(root).isEmpty()) {
        return new IllegalStateException("no fault is found in a faulty site");
      }
      return null;
    } catch (RuntimeException | LinkageError unusable) {
      return unusable;
    }
  }
}
