package org.headhouse.linter.files;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a file is likely to be meant as, though its name keeps it from being read. */
final class SiteLookAlikes {
  private static final String NOTE = ".txt";

  /** What people type, and what programs add or change. */
  private static final List<String> EXTENSIONS =
      List.of(".yaml", ".yml", ".yalm", ".ymal", ".yaml" + NOTE, ".yml" + NOTE);

  private SiteLookAlikes() {}

  /**
   * The name that a file should have.
   *
   * @param name its path with forward slashes
   */
  static Optional<String> meant(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return EXTENSIONS.stream()
        .filter(extension -> lower.endsWith(extension) && !lower.endsWith("/" + extension))
        .findFirst()
        .map(extension -> name.substring(0, name.length() - extension.length()) + ".yaml")
        .filter(meant -> !meant.equals(name));
  }

  /** Whether a file without a folder is likely to be meant as the one of a name. */
  static boolean isMeant(String name, String usual) {
    String plain = meant(name).orElse(name).toLowerCase(Locale.ROOT).replace('_', '-');
    String json = usual.replace(".yaml", ".json");
    return !name.equals(usual)
        && Stream.of(usual, json, usual.replace("-", ""), json.replace("-", ""))
            .anyMatch(plain::equals);
  }
}
