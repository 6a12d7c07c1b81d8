package org.headhouse.linter;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.check.SiteCheck;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.source.Limits;

/** Checks one file so that nothing which happens to it ends the run. */
final class SingleFile {
  private SingleFile() {}

  static FileOutcome check(SiteCheck check, SiteInput input, Limits limits) {
    try {
      return check.check(input.path(), SiteLinter.read(input, limits));
    } catch (IOException exception) {
      return trouble(input, "the file cannot be read: " + reason(exception));
    } catch (RuntimeException | StackOverflowError | LinkageError failure) {
      return trouble(input, "the tool failed on this file: " + failure);
    }
  }

  private static String reason(IOException exception) {
    if (exception instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (exception instanceof NoSuchFileException) {
      return "it does not exist";
    }
    String message =
        exception instanceof FileSystemException failure && failure.getReason() != null
            ? failure.getReason()
            : exception.getMessage();
    return message == null ? exception.getClass().getSimpleName() : message;
  }

  private static FileOutcome trouble(SiteInput input, String text) {
    return new FileOutcome(
        List.of(), List.of(new Notification(Level.ERROR, text, input.path(), null)), List.of(), 0);
  }
}
