package org.headhouse.linter.editor;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * A text as an editor has it, saved or not.
 *
 * @param uri as the editor writes it
 * @param version counted by the editor
 * @param file that the text takes the place of, or null where it has none on this machine
 */
record OpenText(String uri, int version, String text, @Nullable Path file) {
  private static final String BYTE_ORDER_MARK = "\uFEFF";
  private static final Pattern THIS_HOST =
      Pattern.compile("^file://localhost/", Pattern.CASE_INSENSITIVE);
  private static final Pattern KEY_OF_A_SITE =
      Pattern.compile("^(?:\uFEFF)?(?:site|chain|weather-station) *:", Pattern.MULTILINE);

  /** What a text is taken for. */
  enum Role {
    SITE,
    POLICY,
    DEVICE_TYPES,
    /** YAML of another kind, which is left alone. */
    OTHER
  }

  static OpenText of(String uri, int version, String text) {
    return new OpenText(uri, version, text, path(uri));
  }

  /**
   * The file that a URI names, or null for anything but a file of this machine. A space need not be
   * escaped, and the host may be named (RFC 8089, appendix E.2 and chapter 2).
   */
  static @Nullable Path path(String uri) {
    try {
      URI parsed = URI.create(THIS_HOST.matcher(uri).replaceFirst("file:///").replace(" ", "%20"));
      return "file".equalsIgnoreCase(parsed.getScheme())
          ? Path.of(parsed).toAbsolutePath().normalize()
          : null;
    } catch (IllegalArgumentException | FileSystemNotFoundException | SecurityException noFile) {
      return null;
    }
  }

  /**
   * What the text is taken for: the two files that hold for all sites by their names, a site by the
   * folder {@code sites} or by its keys.
   */
  Role role() {
    String name = file == null ? "" : String.valueOf(file.getFileName());
    if (name.equals("linter.yaml")) {
      return Role.POLICY;
    }
    if (name.equals("device-types.yaml")) {
      return Role.DEVICE_TYPES;
    }
    boolean yaml = file == null || name.endsWith(".yaml") || name.endsWith(".yml");
    return yaml && (isInSites() || KEY_OF_A_SITE.matcher(text).find()) ? Role.SITE : Role.OTHER;
  }

  private boolean isInSites() {
    for (Path folder = file; folder != null; folder = folder.getParent()) {
      if (folder.endsWith("sites")) {
        return true;
      }
    }
    return false;
  }

  /** How the text is called in results. */
  String shown(BaseFolder base) {
    return file == null ? "<" + uri + ">" : base.shown(file);
  }

  /** The text for a check. */
  SiteInput input(BaseFolder base) {
    return file == null
        ? SiteInput.text(shown(base), text)
        : SiteInput.text(file, shown(base), text);
  }

  /** The text with its positions. */
  Positions positions() {
    boolean marked = text.startsWith(BYTE_ORDER_MARK);
    return new Positions(new SourceText(uri, marked ? text.substring(1) : text), marked ? 1 : 0);
  }
}
