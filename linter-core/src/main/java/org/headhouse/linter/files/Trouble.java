package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import org.jspecify.annotations.Nullable;

/** What keeps a run from its work; the message is for the user, in plain words. */
public final class Trouble extends Exception {
  private static final long serialVersionUID = 1;

  public Trouble(String message) {
    super(message);
  }

  public Trouble(String message, @Nullable Throwable cause) {
    super(message, cause);
  }

  /** What cannot be done, to which file, and why. */
  public static Trouble of(String what, IOException failure) {
    return new Trouble(what + ": " + reason(failure), failure);
  }

  /** That a name cannot be that of a file here. */
  public static Trouble of(InvalidPathException noName) {
    return new Trouble(
        "\""
            + noName.getInput()
            + "\" cannot be the name of a file here: correct it; where letters of the name are lost,"
            + " set LC_ALL=C.UTF-8",
        noName);
  }

  /** Messages of the file system name the file only, and leave the reason to the class. */
  private static String reason(IOException failure) {
    if (!(failure instanceof FileSystemException trouble)) {
      String message = failure.getMessage();
      return message == null ? failure.getClass().getSimpleName() : message;
    }
    return trouble.getFile() + ": " + reasonOf(trouble);
  }

  private static String reasonOf(FileSystemException trouble) {
    if (trouble instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (trouble instanceof NoSuchFileException) {
      return "it does not exist";
    }
    if (trouble instanceof FileAlreadyExistsException) {
      return "a file stands where a folder is needed";
    }
    if (trouble instanceof DirectoryNotEmptyException) {
      return "a folder stands where a file is needed";
    }
    String reason = trouble.getReason();
    return reason == null ? trouble.getClass().getSimpleName() : reason;
  }
}
