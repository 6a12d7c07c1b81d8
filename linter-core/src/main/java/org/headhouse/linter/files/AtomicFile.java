package org.headhouse.linter.files;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Writes a file beside its place and moves it there in one step: no reader ever sees half of it,
 * several runs may write it at a time, and where writing fails or the power does, the old file is
 * still there.
 */
public final class AtomicFile {
  private AtomicFile() {}

  /** What writes the content. */
  @FunctionalInterface
  public interface Writer {
    /** Writes all of it; the stream is closed by the caller. */
    void write(OutputStream out) throws Exception;
  }

  /** Some formats close what they write to, and the file must be forced to the disk before that. */
  private static final class LeftOpen extends FilterOutputStream {
    LeftOpen(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      out.write(bytes, from, length);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }

  /** How a file gets from beside its place into it. */
  @FunctionalInterface
  private interface Move {
    void move(Path beside, Path file) throws IOException;
  }

  /**
   * Writes a file, or replaces it.
   *
   * @throws UserError where it cannot be written; the old file is then left as it was
   */
  public static void write(Path file, Writer writer) throws UserError {
    write(file, writer, AtomicFile::replace);
  }

  /**
   * Writes a file where there is none; one that was made in the meantime stays as it is.
   *
   * @throws UserError where it cannot be written, or is there
   */
  public static void writeNew(Path file, Writer writer) throws UserError {
    write(file, writer, AtomicFile::occupy);
  }

  // Each format throws exceptions of its own; all of them mean that the file is not written.
  @SuppressWarnings("IllegalCatch")
  private static void write(Path file, Writer writer, Move move) throws UserError {
    // Not a temporary file of the library: only its owner could ever read that.
    Path beside = beside(file);
    try {
      createFolder(file.toAbsolutePath().getParent());
      try (FileChannel channel =
          FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
        writer.write(new LeftOpen(out));
        out.flush();
        channel.force(true);
      }
      move.move(beside, file);
    } catch (IOException failure) {
      if (failure instanceof FileAlreadyExistsException && Files.isRegularFile(file)) {
        throw new UserError(file + " exists already, and was not changed", failure);
      }
      throw UserError.of(file + " cannot be written", failure);
    } catch (UserError known) {
      // Of another file, which was written meanwhile.
      throw known;
    } catch (Exception failure) {
      throw wrapped(file, failure);
    } finally {
      delete(beside);
    }
  }

  /** Formats wrap the failure of the disk in one of their own, which does not help users. */
  private static UserError wrapped(Path file, Exception failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException disk) {
        return UserError.of(file + " cannot be written", disk);
      }
    }
    return new UserError(file + " cannot be written: " + failure, failure);
  }

  /**
   * A name of its own for each run, so that no two write into one file. It is hidden, so that no
   * search takes it for a site, and does not contain the name of the file, which may be as long as
   * the file system allows.
   */
  static Path beside(Path file) {
    return file.resolveSibling("." + UUID.randomUUID() + ".part");
  }

  /** Does not create a folder that is there: that fails where it is a link to one. */
  private static void createFolder(@Nullable Path folder) throws IOException {
    if (folder != null && !Files.isDirectory(folder)) {
      Files.createDirectories(folder);
    }
  }

  /** Replaces a file so that there is always the old one or the new one. */
  static void replace(Path beside, Path file) throws IOException {
    // A move may replace an empty folder, and its message is another on each system.
    if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileSystemException(
          file.toString(), null, "there is a folder where a file is needed");
    }
    try {
      Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException unusualFolder) {
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /**
   * Unlike a move, a link never replaces a file that was made in the meantime. The file beside is
   * left for the caller to delete.
   */
  private static void occupy(Path beside, Path file) throws IOException {
    try {
      Files.createLink(file, beside);
    } catch (UnsupportedOperationException noLinks) {
      Files.move(beside, file);
    } catch (FileAlreadyExistsException occupied) {
      throw occupied;
    } catch (FileSystemException noLinksHere) {
      Files.move(beside, file);
    }
  }

  /** Deletes what was not moved into its place. */
  static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException leftBehind) {
      // The failure that led here is reported; a file left in the output folder is no second one.
    }
  }
}
