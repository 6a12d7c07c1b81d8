package org.headhouse.linter.maven;

import java.util.Arrays;
import java.util.List;
import org.codehaus.plexus.util.SelectorUtils;

/** Tells by their names which files of a folder are sites; what is hidden by a dot never is. */
final class SiteNames {
  private final List<String> includes;
  private final List<String> excludes;

  SiteNames(List<String> includes, List<String> excludes) {
    this.includes = includes.stream().map(SiteNames::pattern).toList();
    this.excludes = excludes.stream().map(SiteNames::pattern).toList();
  }

  /**
   * Whether a file is a site.
   *
   * @param name its path from the folder, with forward slashes
   */
  boolean matches(String name) {
    return Arrays.stream(name.split("/")).noneMatch(part -> part.startsWith("."))
        && matchesAny(includes, name)
        && !matchesAny(excludes, name);
  }

  private static boolean matchesAny(List<String> patterns, String name) {
    return patterns.stream().anyMatch(pattern -> SelectorUtils.matchPath(pattern, name, "/", true));
  }

  /** With forward slashes; the name of a folder stands for all that is in it. */
  private static String pattern(String written) {
    String pattern = written.strip().replace('\\', '/');
    return pattern.endsWith("/") ? pattern + "**" : pattern;
  }
}
