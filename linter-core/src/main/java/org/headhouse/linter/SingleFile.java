package org.headhouse.linter;

import java.io.IOException;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.source.FileFault;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/** Works on one file so that nothing which happens to it ends the run. */
final class SingleFile {
  private SingleFile() {}

  /** What came of a file: an outcome, or the trouble that was in the way. */
  record Attempt<T>(String path, @Nullable T outcome, @Nullable Notification trouble) {}

  /** What is done with the path and the bytes of a file; null where nothing comes of it. */
  @FunctionalInterface
  interface Work<T> {
    @Nullable T apply(String path, byte[] bytes);
  }

  static <T> Attempt<T> attempt(SiteInput input, Limits limits, Work<T> work) {
    try {
      return new Attempt<>(input.path(), work.apply(input.path(), input.bytes(limits)), null);
    } catch (IOException exception) {
      return trouble(input, "the file cannot be read: " + FileFault.reason(exception));
    } catch (RuntimeException | StackOverflowError | LinkageError failure) {
      return trouble(input, "the tool failed on this file: " + failure);
    }
  }

  /** The figures of a site; that it has none is trouble too. */
  static Attempt<SiteFigures> figures(SiteInput input, Limits limits, Work<SiteFigures> work) {
    Attempt<SiteFigures> attempt = attempt(input, limits, work);
    return attempt.outcome() == null && attempt.trouble() == null
        ? new Attempt<>(
            input.path(),
            null,
            new Notification(
                Level.WARNING, "it has no figures: a check tells why", input.path(), null))
        : attempt;
  }

  private static <T> Attempt<T> trouble(SiteInput input, String text) {
    return new Attempt<>(
        input.path(), null, new Notification(Level.ERROR, text, input.path(), null));
  }
}
