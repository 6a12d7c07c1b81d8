package org.headhouse.linter.maven;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.UUID;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;

/**
 * Gives a file of the user other content, in one step and only where it still has the content that
 * the change was made for. A link stays one, and the file keeps who may do what with it.
 */
final class FileUpdate {
  private FileUpdate() {}

  static void write(Path file, byte[] before, byte[] after) throws MojoExecutionException {
    Path beside = null;
    try {
      Path target = file.toRealPath();
      if (!Files.isWritable(target)) {
        throw new MojoExecutionException(file + " cannot be written: it is read-only");
      }
      beside = target.resolveSibling(target.getFileName() + "." + UUID.randomUUID() + ".part");
      Files.copy(target, beside, StandardCopyOption.COPY_ATTRIBUTES);
      Files.write(beside, after);
      if (!Arrays.equals(Files.readAllBytes(target), before)) {
        throw new MojoExecutionException(
            file
                + " was changed by somebody else meanwhile, and is left as it is: run the goal again");
      }
      move(beside, target);
    } catch (IOException failure) {
      throw FileTrouble.of(file + " cannot be written", failure);
    } finally {
      delete(beside);
    }
  }

  private static void move(Path beside, Path target) throws IOException {
    try {
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException unusualFolder) {
      Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void delete(@Nullable Path beside) {
    try {
      if (beside != null) {
        Files.deleteIfExists(beside);
      }
    } catch (IOException leftBehind) {
      // The failure that led here is told; the name of the rest says what it is.
    }
  }
}
