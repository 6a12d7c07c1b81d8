package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files of the repository that tests write: the reference of the rules, the drawings that were
 * looked at, the results of the faulty sites.
 *
 * <p>With {@code -Dwrite} the tests write them; without, they fail where one is stale. The tests
 * are tagged {@code written}.
 */
public final class Written {
  private static final String COMMAND = "./mvnw -q -pl linter-core test -Dgroups=written -Dwrite";

  private Written() {}

  /** Whether the files are written, not compared. */
  public static boolean anew() {
    return System.getProperty("write") != null;
  }

  /** Compares a file with what it should hold, or writes it. */
  public static void compare(Path file, String text) throws IOException {
    if (anew()) {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.writeString(file, text);
    }
    assertThat(text)
        .as("%s is stale; where what is new is right, write it with %s", file, COMMAND)
        .isEqualTo(Files.exists(file) ? Files.readString(file) : "");
  }
}
