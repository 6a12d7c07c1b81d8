package org.headhouse.linter.source;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A file, or a text that takes the place of one. It is read when its turn comes, and not kept. */
public interface InputFile {
  /**
   * How the file is called in results, with forward slashes; an angle bracket in front marks a text
   * without a file.
   */
  String path();

  /** Where the file is, or null for a text. */
  @Nullable Path origin();

  /**
   * The first bytes of the content.
   *
   * @param most how many are wanted at most
   */
  byte[] read(int most) throws IOException;

  /** The content as far as it is needed: one byte over the limit shows that it is over. */
  default byte[] bytes(Limits limits) throws IOException {
    return read(limits.bytes() + 1);
  }
}
