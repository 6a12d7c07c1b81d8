package org.headhouse.linter.result;

import java.util.Arrays;
import java.util.List;
import org.headhouse.linter.stability.Internal;

/**
 * A file before and after its results were fixed as far as possible; nothing is written.
 *
 * @param path how the file is called in results
 * @param before the bytes as they were read
 * @param after the bytes as they could be written
 * @param applied what was fixed, and how
 * @param remaining the results that are left, suppressed ones included
 */
@SuppressWarnings("ArrayRecordComponent") // Written to a file, and never compared.
public record FixedSite(
    String path, byte[] before, byte[] after, List<AppliedFix> applied, List<Result> remaining) {

  @Internal
  public FixedSite {
    applied = List.copyOf(applied);
    remaining = List.copyOf(remaining);
  }

  /** Whether anything was fixed. */
  public boolean isChanged() {
    return !Arrays.equals(before, after);
  }
}
