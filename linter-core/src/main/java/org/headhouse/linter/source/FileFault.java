package org.headhouse.linter.source;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Why a file cannot be read or written, in plain words. */
@Internal
public final class FileFault {
  private FileFault() {}

  /** The reason alone; the caller names the file. */
  public static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof NoSuchFileException) {
      return "it does not exist";
    }
    if (failure instanceof FileAlreadyExistsException) {
      return "there is a file where a folder is needed";
    }
    if (failure instanceof DirectoryNotEmptyException) {
      return "there is a folder where a file is needed";
    }
    String message = message(failure);
    return message == null ? failure.getClass().getSimpleName() : message;
  }

  /** The message of an exception of the file system names the file too; its reason does not. */
  private static @Nullable String message(IOException failure) {
    return failure instanceof FileSystemException ofFile
        ? ofFile.getReason()
        : failure.getMessage();
  }
}
