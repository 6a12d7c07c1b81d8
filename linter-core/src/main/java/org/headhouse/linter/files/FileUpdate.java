package org.headhouse.linter.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import org.headhouse.linter.source.RegularFile;

/**
 * Replaces the content of a file of the user in one step, if it still has the content that the
 * change was made for. A link stays a link, and the file keeps its permissions.
 */
public final class FileUpdate {
  private FileUpdate() {}

  /**
   * Writes a file anew.
   *
   * @param before what the change was made for
   * @throws UserError where it cannot be written, or has other content; it is then left as it is
   */
  public static void write(Path file, byte[] before, byte[] after) throws UserError {
    Path beside = null;
    try {
      Path target = file.toRealPath();
      if (!Files.isWritable(target)) {
        throw new UserError(file + " cannot be written: it is read-only");
      }
      requireContent(target, before, file);
      beside = AtomicFile.beside(target);
      Files.copy(target, beside, StandardCopyOption.COPY_ATTRIBUTES);
      write(beside, after);
      requireContent(target, before, file);
      AtomicFile.replace(beside, target);
    } catch (IOException failure) {
      throw UserError.of(file + " cannot be written", failure);
    } finally {
      if (beside != null) {
        AtomicFile.delete(beside);
      }
    }
  }

  private static void write(Path beside, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer rest = ByteBuffer.wrap(content);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  private static void requireContent(Path target, byte[] before, Path file)
      throws IOException, UserError {
    if (!has(target, before)) {
      throw new UserError(
          file + " was changed by somebody else meanwhile, and was not written: try again");
    }
  }

  private static boolean has(Path file, byte[] content) throws IOException {
    try (InputStream in = RegularFile.open(file)) {
      return Arrays.equals(in.readNBytes(content.length + 1), content);
    }
  }
}
