package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;

/** The plugin as Maven finds it in a repository; for the scripts of {@code src/it}. */
public final class PluginJar {
  private static final Pattern VERSION =
      Pattern.compile("linter-maven-plugin</artifactId>\\s*<version>(.*?)</version>");

  private static final Pattern DEPENDENCY =
      Pattern.compile("<dependency>(.*?)</dependency>", Pattern.DOTALL);

  private final String version;
  private final Path pom;
  private final Path jar;

  /** The plugin that a build uses, in its repository. */
  public PluginJar(File repository, File build) throws IOException {
    this.version =
        VERSION
            .matcher(Files.readString(build.toPath().resolve("pom.xml")))
            .results()
            .map(match -> match.group(1))
            .findFirst()
            .orElseThrow();
    Path folder = repository.toPath().resolve("org/headhouse/linter-maven-plugin").resolve(version);
    this.pom = folder.resolve("linter-maven-plugin-" + version + ".pom");
    this.jar = folder.resolve("linter-maven-plugin-" + version + ".jar");
  }

  /** Maven would look up, open and search each jar more. */
  public void needsNothing() throws IOException {
    assertThat(
            DEPENDENCY
                .matcher(Files.readString(pom))
                .results()
                .map(MatchResult::group)
                .filter(one -> !one.contains("<scope>provided") && !one.contains("<scope>test"))
                .toList())
        .isEmpty();
  }

  /** Each library states its licence in its own way. */
  public void hasTheLicencesOfItsLibraries() throws IOException {
    Map<String, String> expected =
        Map.of(
            "META-INF/LICENSE", "Apache License",
            "META-INF/NOTICE", "Jackson JSON processor",
            "licenses/extreme.indiana.edu.license.TXT", "Indiana University",
            "META-INF/NOTICE.txt", "Apache Commons Codec",
            "META-INF/FastDoubleParser-LICENSE", "MIT License",
            "about.html", "Eclipse Distribution License",
            "licenses/re2j.txt", "The Go Authors",
            "META-INF/maven/org.yaml/snakeyaml/pom.xml", "Apache License",
            "META-INF/maven/com.networknt/json-schema-validator/pom.xml", "Apache License",
            "META-INF/maven/io.github.java-diff-utils/java-diff-utils/pom.xml", "java-diff-utils");
    try (JarFile open = new JarFile(jar.toFile())) {
      for (Map.Entry<String, String> one : expected.entrySet()) {
        ZipEntry entry = open.getEntry(one.getKey());
        assertThat(entry).as(one.getKey()).isNotNull();
        assertThat(new String(open.getInputStream(entry).readAllBytes(), UTF_8))
            .contains(one.getValue());
      }
    }
  }

  /** Nothing twice, nothing for some versions of Java only, and nothing that Maven itself has. */
  public void isTidy() throws IOException {
    List<String> names = new ArrayList<>();
    try (JarFile open = new JarFile(jar.toFile())) {
      open.stream().map(ZipEntry::getName).forEach(names::add);
      assertThat(open.getManifest().getMainAttributes())
          .containsEntry(Attributes.Name.IMPLEMENTATION_VERSION, version);
    }
    assertThat(names)
        .doesNotHaveDuplicates()
        .noneMatch(name -> name.endsWith("module-info.class"))
        .noneMatch(name -> name.startsWith("META-INF/versions/"))
        .noneMatch(name -> name.startsWith("org/slf4j/"))
        .noneMatch(name -> name.startsWith("org/apache/maven/"));
  }
}
