package org.headhouse.linter.report;

import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.stability.Internal;

/** What is known of the earlier states of files. Safe for use by several threads. */
@Internal
@FunctionalInterface
public interface SiteHistory {
  /** Nothing is known. */
  SiteHistory NONE = (file, content) -> FileHistory.UNKNOWN;

  /**
   * The history of one file. It does not fail: where the history cannot be read it is unknown.
   *
   * @param content of the file as it is now
   */
  FileHistory of(InputFile file, byte[] content);
}
