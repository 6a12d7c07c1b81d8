package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;

/** The manifest as other programs' containers read it: OSGi Core Release 8, chapter 3.2. */
class BundleTest {
  private static final Path CLASSES = Path.of("target", "classes");

  private static Attributes manifest() throws IOException {
    try (InputStream in = Files.newInputStream(CLASSES.resolve("META-INF/MANIFEST.MF"))) {
      return new Manifest(in).getMainAttributes();
    }
  }

  /** The clauses of a header; commas in quotes divide none. */
  private static List<String> clauses(String header) throws IOException {
    return Arrays.asList(manifest().getValue(header).split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"));
  }

  @Test
  void hasOneNameForBundleAndModule() throws IOException {
    assertThat(manifest().getValue("Bundle-ManifestVersion")).isEqualTo("2");
    assertThat(manifest().getValue("Bundle-SymbolicName")).isEqualTo("org.headhouse.linter");
    assertThat(manifest().getValue("Automatic-Module-Name")).isEqualTo("org.headhouse.linter");
  }

  @Test
  void exportsTheStablePackagesOnly() throws IOException {
    assertThat(clauses("Export-Package"))
        .extracting(clause -> clause.substring(0, clause.indexOf(';')))
        .containsExactlyInAnyOrderElementsOf(ApiTest.stablePackages());
  }

  /** What a program that embeds the library may leave out is optional here too. */
  @Test
  void needsWhatTheLibraryNeeds() throws IOException {
    assertThat(clauses("Import-Package"))
        .anyMatch(clause -> clause.startsWith("org.yaml.snakeyaml.parser;version="))
        .anyMatch(clause -> clause.startsWith("com.networknt.schema;version="))
        .anyMatch(clause -> clause.startsWith("com.google.re2j"))
        .filteredOn(clause -> clause.matches("(gg\\.jte|org\\.codehaus\\.plexus)\\..*"))
        .isNotEmpty()
        .allMatch(clause -> clause.contains("resolution:=optional"));
  }
}
