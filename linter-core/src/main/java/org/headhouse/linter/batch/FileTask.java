package org.headhouse.linter.batch;

import java.io.IOException;
import java.io.Serializable;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.source.FileFault;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/** Works on one file so that nothing which happens to it ends the run. */
public final class FileTask {
  private FileTask() {}

  /** What came of a file: a value, or what kept it from having one. */
  public record Outcome<T>(String path, @Nullable T value, @Nullable Notification notification)
      implements Serializable {

    /** The same for another process. */
    Outcome<T> withoutCause() {
      return new Outcome<>(path, value, notification == null ? null : notification.withoutCause());
    }
  }

  /** What is done with the path and the bytes of a file; null where nothing comes of it. */
  @FunctionalInterface
  public interface Work<T> {
    @Nullable T apply(String path, byte[] bytes);
  }

  /** Reads a file and works on it. */
  public static <T> Outcome<T> run(InputFile input, Limits limits, Work<T> work) {
    try {
      return new Outcome<>(input.path(), work.apply(input.path(), input.bytes(limits)), null);
    } catch (IOException exception) {
      return failed(input, "the file cannot be read: " + FileFault.reason(exception), exception);
    } catch (RuntimeException | StackOverflowError | LinkageError failure) {
      return failed(input, "the tool failed on this file: " + failure, failure);
    }
  }

  private static <T> Outcome<T> failed(InputFile input, String text, Throwable cause) {
    return new Outcome<>(
        input.path(), null, new Notification(Level.ERROR, text, input.path(), null, cause));
  }
}
