package org.headhouse.linter;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.check.SiteCheck;
import org.headhouse.linter.fix.FixLoop;
import org.headhouse.linter.result.AppliedFix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;

/** A file before and after its results were mended as far as can be; nothing is written. */
public final class FixedSite {
  private final String path;
  private final byte[] before;
  private final FixLoop mending;

  private FixedSite(String path, byte[] before, FixLoop mending) {
    this.path = path;
    this.before = before.clone();
    this.mending = mending;
  }

  /** Mends a file with fixes of a kind, checking what each leaves. */
  static FixedSite of(String path, byte[] bytes, FixKind asked, SiteCheck check, LocalDate today) {
    return new FixedSite(
        path,
        bytes,
        FixLoop.of(
            bytes,
            asked,
            text -> {
              FileOutcome outcome = check.check(path, text, today);
              return new FixLoop.Checked(outcome.results(), outcome.notifications().size());
            }));
  }

  /** How the file is called in results. */
  public String path() {
    return path;
  }

  /** The bytes as they were read. */
  public byte[] before() {
    return before.clone();
  }

  /** The bytes as they could be written. */
  public byte[] after() {
    return mending.bytes();
  }

  /** Whether anything was mended. */
  public boolean isChanged() {
    return !Arrays.equals(before, mending.bytes());
  }

  /** What was mended, and how. */
  public List<AppliedFix> applied() {
    return mending.applied();
  }

  /** What is left to tell of the file, suppressed results included. */
  public List<Result> remaining() {
    return mending.remaining().results();
  }
}
