package org.headhouse.linter.source;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A file, or a text that takes the place of one. Its content is read when needed, and not kept. */
public interface InputFile {
  /**
   * The name of the file in results, with forward slashes; an angle bracket in front marks a text
   * without a file.
   */
  String path();

  /** Where the file is, or null for a text. */
  @Nullable Path origin();

  /**
   * The first bytes of the content.
   *
   * @param most the greatest number of bytes
   */
  byte[] read(int most) throws IOException;

  /** The content, or one byte more than the limit where the file is larger. */
  default byte[] bytes(Limits limits) throws IOException {
    return read(limits.bytes() + 1);
  }
}
