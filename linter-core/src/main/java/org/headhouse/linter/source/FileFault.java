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

  /** The reason alone: which file it is, the caller says. */
  public static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof NoSuchFileException) {
      return "it does not exist";
    }
    if (failure instanceof FileAlreadyExistsException) {
      return "a file stands where a folder is needed";
    }
    if (failure instanceof DirectoryNotEmptyException) {
      return "a folder stands where a file is needed";
    }
    String told = told(failure);
    return told == null ? failure.getClass().getSimpleName() : told;
  }

  /** Messages of the file system name the file as well; what it gives as the reason does not. */
  private static @Nullable String told(IOException failure) {
    return failure instanceof FileSystemException ofFile
        ? ofFile.getReason()
        : failure.getMessage();
  }
}
