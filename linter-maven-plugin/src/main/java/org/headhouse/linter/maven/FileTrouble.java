package org.headhouse.linter.maven;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.apache.maven.plugin.MojoExecutionException;

/** Says in plain words why a file cannot be read or written. */
final class FileTrouble {
  private FileTrouble() {}

  /** An error of the build: what cannot be done, to which file, and why. */
  static MojoExecutionException of(String what, IOException failure) {
    return new MojoExecutionException(what + ": " + reason(failure), failure);
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
    String reason = trouble.getReason();
    return reason == null ? trouble.getClass().getSimpleName() : reason;
  }
}
