package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import org.headhouse.linter.source.FileFault;
import org.jspecify.annotations.Nullable;

/** Why a run cannot do its work; the message is for the user, in plain words. */
public final class UserError extends Exception {
  private static final long serialVersionUID = 1;

  public UserError(String message) {
    super(message);
  }

  public UserError(String message, @Nullable Throwable cause) {
    super(message, cause);
  }

  /** What cannot be done, to which file, and why. */
  public static UserError of(String what, IOException failure) {
    String file = failure instanceof FileSystemException ofFile ? ofFile.getFile() + ": " : "";
    return new UserError(what + ": " + file + FileFault.reason(failure), failure);
  }

  /** That a name cannot be that of a file here. */
  public static UserError of(InvalidPathException noName) {
    return new UserError(
        "\""
            + noName.getInput()
            + "\" cannot be the name of a file here: correct it; if letters of the name are lost,"
            + " set LC_ALL=C.UTF-8",
        noName);
  }
}
