package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.function.Predicate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.RegularFile;

/** Keeps a goal from replacing what somebody else wrote. */
final class OwnFile {
  /** What a file is known by is among its first bytes. */
  private static final int START = 4096;

  private OwnFile() {}

  /**
   * Refuses to replace a file of somebody else.
   *
   * @param shown how the file is called
   * @param kind what the goal writes: {@code a schema}
   * @param mark whether a file begins as the goal's own do; in ISO 8859-1, which keeps all bytes
   * @throws UserError where the file is there, and is another or cannot be read
   */
  static void require(Path file, String shown, String kind, Predicate<String> mark)
      throws UserError {
    boolean isOwn;
    try {
      isOwn = isOwn(file, mark);
    } catch (IOException unreadable) {
      throw UserError.of(shown + " is there and cannot be read", unreadable);
    }
    if (!isOwn) {
      throw new UserError(
          shown
              + " exists, but is not "
              + kind
              + " of this linter, and nothing is written: move it, or name another folder");
    }
  }

  /** Whether a file is not there, or begins as it should. */
  static boolean isOwn(Path file, Predicate<String> mark) throws IOException {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    try (InputStream in = RegularFile.open(file)) {
      return mark.test(new String(in.readNBytes(START), ISO_8859_1));
    }
  }
}
