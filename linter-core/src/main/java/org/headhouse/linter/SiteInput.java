package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.SiteFiles;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.RegularFile;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * A file to check, or a text that takes the place of one. It is read when its turn comes, and not
 * kept.
 *
 * @param path how the file is called in results, with forward slashes; an angle bracket in front
 *     marks a text without a file
 */
public record SiteInput(String path, Content content) implements InputFile {

  public SiteInput {
    Objects.requireNonNull(path, "an input without a path");
    Objects.requireNonNull(content, "an input without content");
  }

  /** Where the bytes come from. */
  @FunctionalInterface
  public interface Content {
    /**
     * At most some bytes.
     *
     * @param most more are not needed, since a file of that size is refused
     */
    byte[] read(int most) throws IOException;
  }

  /** A file. */
  public static SiteInput file(Path file, String shownAs) {
    return new SiteInput(shownAs, new FileContent(file));
  }

  /** A file under the name by which it was found. */
  public static SiteInput file(Path file) {
    return file(file, slashes(file));
  }

  private static String slashes(Path file) {
    return file.toString().replace(file.getFileSystem().getSeparator(), "/");
  }

  /**
   * The sites in a folder and below it, as the plugin and the command find them: every {@code
   * .yaml} and {@code .yml}, but for what is hidden by a dot in front of its name. A link that
   * leads out of the folder is found, and cannot be read.
   *
   * @param folder of sites alone; policy and device types lie beside it
   * @return in the order of their paths
   * @throws IOException where it cannot be read, or has no site
   */
  public static List<SiteInput> in(Path folder) throws IOException {
    try {
      SiteNames names = new SiteNames(SiteNames.USUAL, List.of(), parameter -> "the program");
      List<FoundFile> files =
          new SiteFiles(folder, names, true, parameter -> "the program").find(List.of());
      if (files.isEmpty()) {
        throw new IOException("no file in " + folder + " matches " + names);
      }
      return files.stream().map(file -> found(file, slashes(file.path()))).toList();
    } catch (UserError unreadable) {
      throw new IOException(unreadable.getMessage(), unreadable);
    }
  }

  /** A file that was looked for; reading one that was refused fails with the reason. */
  @Internal
  public static SiteInput found(FoundFile file, String shownAs) {
    return file.refused() == null
        ? file(file.path(), shownAs)
        : new SiteInput(
            shownAs,
            most -> {
              throw file.refused();
            });
  }

  /** A text. */
  public static SiteInput text(String name, String text) {
    byte[] bytes = text.getBytes(UTF_8);
    return new SiteInput(name, most -> bytes);
  }

  /**
   * A text that takes the place of a file, as an editor has it before it is saved.
   *
   * @param file which need not be there; a baseline that a policy names is looked for beside it
   */
  public static SiteInput text(Path file, String shownAs, String text) {
    return new SiteInput(shownAs, new UnsavedContent(file, text));
  }

  @Override
  public byte[] read(int most) throws IOException {
    byte[] bytes = content.read(most);
    if (bytes == null) { // a program may be compiled without a check of nulls
      throw new IOException("it has no content");
    }
    return bytes;
  }

  @Override
  public @Nullable Path origin() {
    if (content instanceof UnsavedContent unsaved) {
      return unsaved.file;
    }
    return content instanceof FileContent from ? from.file : null;
  }

  private record UnsavedContent(Path file, String text) implements Content {
    @Override
    public byte[] read(int most) {
      return text.getBytes(UTF_8);
    }
  }

  private record FileContent(Path file) implements Content {
    @Override
    public byte[] read(int most) throws IOException {
      try (InputStream in = RegularFile.open(file)) {
        return in.readNBytes(most);
      }
    }
  }
}
