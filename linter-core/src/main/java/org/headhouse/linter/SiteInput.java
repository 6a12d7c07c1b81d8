package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.RegularFile;
import org.jspecify.annotations.Nullable;

/**
 * A file to check, or a text that takes the place of one. It is read when its turn comes, and not
 * kept.
 *
 * @param path how the file is called in results, with forward slashes; an angle bracket in front
 *     marks a text without a file
 */
public record SiteInput(String path, Content content) implements InputFile {

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
    return file(file, file.toString().replace(file.getFileSystem().getSeparator(), "/"));
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
    return content.read(most);
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
