package org.headhouse.linter.files;

import java.util.List;
import java.util.Optional;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Stream;
import org.codehaus.plexus.util.SelectorUtils;

/** Decides by their names which files of a folder are sites; hidden files never are. */
public final class SiteNames {
  /** Which files are sites unless the user says otherwise. */
  public static final List<String> USUAL = List.of("**/*.yaml", "**/*.yml");

  private static final String IN_ANY_FOLDER = "**/*";

  private final List<String> includes;
  private final List<String> excludes;
  private final List<String> excludedWithAllBelow;

  /**
   * @param includes patterns of names, in which * stands for any part of a name, ** for any folders
   * @param excludes patterns of names that are no sites all the same
   * @throws UserError where a pattern cannot be read
   */
  public SiteNames(List<String> includes, List<String> excludes, ParameterNames called)
      throws UserError {
    this.includes = includes.stream().map(SiteNames::pattern).toList();
    this.excludes = excludes.stream().map(SiteNames::pattern).toList();
    this.excludedWithAllBelow =
        this.excludes.stream()
            .map(SiteNames::withAllBelow)
            .filter(pattern -> pattern.equals("**") || pattern.endsWith("/**"))
            .toList();
    try {
      // Each is tried once, so that a faulty one does not end a run in the middle.
      Stream.concat(this.includes.stream(), this.excludes.stream())
          .forEach(pattern -> matchesAny(List.of(pattern), "any"));
    } catch (PatternSyntaxException wrong) {
      throw new UserError(
          called.of("includes")
              + " or "
              + called.of("excludes")
              + " has a pattern that cannot be read, \""
              + wrong.getPattern()
              + "\": correct it",
          wrong);
    }
  }

  /**
   * Whether a file is a site.
   *
   * @param name its path from the folder, with forward slashes
   */
  public boolean matches(String name) {
    return !isHidden(name) && matchesAny(includes, name) && !matchesAny(excludes, name);
  }

  /**
   * What to name a file that is likely to be meant as a site and is none, or empty.
   *
   * @param name its path from the folder, with forward slashes
   */
  Optional<String> meant(String name) {
    return isHidden(name) || matchesAny(includes, name) || matchesAny(excludes, name)
        ? Optional.empty()
        : SiteLookAlikes.meant(name).filter(this::matches);
  }

  /** Whether nothing in a folder can be a site, however deep it lies. */
  boolean leaveOut(String folder) {
    return isHidden(folder) || matchesAny(excludedWithAllBelow, folder);
  }

  /** Whether a name itself is left out, though names below it may not be. */
  boolean exclude(String name) {
    return matchesAny(excludes, name);
  }

  private static boolean isHidden(String name) {
    return name.startsWith(".") || name.contains("/.");
  }

  private static boolean matchesAny(List<String> patterns, String name) {
    for (String pattern : patterns) {
      if (isAnyFolderAndEnd(pattern)
          ? name.endsWith(pattern.substring(IN_ANY_FOLDER.length())) && !name.startsWith("/")
          : SelectorUtils.matchPath(pattern, name, "/", true)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a pattern asks for an end of the name and nothing else, as the usual ones do. */
  private static boolean isAnyFolderAndEnd(String pattern) {
    return pattern.startsWith(IN_ANY_FOLDER)
        && pattern.length() > IN_ANY_FOLDER.length()
        && isPlain(pattern, IN_ANY_FOLDER.length());
  }

  private static boolean isPlain(String pattern, int from) {
    for (int i = from; i < pattern.length(); i++) {
      if ("*?/".indexOf(pattern.charAt(i)) >= 0) {
        return false;
      }
    }
    return true;
  }

  /** With forward slashes; the name of a folder stands for all that is in it. */
  private static String pattern(String written) {
    String stripped = written.strip();
    if (stripped.startsWith(SelectorUtils.REGEX_HANDLER_PREFIX)) {
      return stripped;
    }
    String pattern = stripped.replace('\\', '/');
    return pattern.endsWith("/") ? pattern + "**" : pattern;
  }

  /**
   * A pattern that ends in two asterisks matches all that lies below what it matches; a slash and a
   * third asterisk after them change nothing. Of other patterns, and of regular expressions,
   * nothing is known.
   */
  private static String withAllBelow(String pattern) {
    return pattern.equals("**/*") || pattern.endsWith("/**/*")
        ? pattern.substring(0, pattern.length() - "/*".length())
        : pattern;
  }

  @Override
  public String toString() {
    return String.join(", ", includes);
  }
}
