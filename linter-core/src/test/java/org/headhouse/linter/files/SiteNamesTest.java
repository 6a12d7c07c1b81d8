package org.headhouse.linter.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.codehaus.plexus.util.SelectorUtils;
import org.junit.jupiter.api.Test;

/** Held against the library that reads patterns of names. */
class SiteNamesTest {
  private static final List<String> PATTERNS =
      List.of(
          "**/*.yaml", "**/*.yml", "**/*-site", "**/*", "*.yaml", "**/a*.yaml", "a/**", "**/?b");

  private static final List<String> NAMES =
      List.of(
          "a.yaml",
          "a/b.yaml",
          "a/b/c.yaml",
          "a.yml",
          "a.YAML",
          "ayaml",
          "a.yaml/b",
          "b-site",
          "a/b-site",
          "-site",
          "/a.yaml",
          "ab",
          "yaml",
          "a b.yaml",
          "a/ab.yaml",
          "\u00e4.yaml");

  @Test
  void patternsMeanWhatTheyMeanToTheLibrary() throws UserError {
    for (String pattern : PATTERNS) {
      SiteNames names = new SiteNames(List.of(pattern), List.of(), "--"::concat);
      for (String name : NAMES) {
        assertThat(names.matches(name))
            .as(pattern + " " + name)
            .isEqualTo(SelectorUtils.matchPath(pattern, name, "/", true));
      }
    }
  }
}
