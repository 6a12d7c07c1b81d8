package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;

/** What a Maven build left behind: its log and its files; for the scripts of {@code src/it}. */
public final class BuildRecord {
  private static final Pattern FAILURE =
      Pattern.compile(
          "\\[ERROR\\] Failed to execute goal \\S+:linter-maven-plugin:\\S+ (.*?) -> \\[Help \\d+\\]",
          Pattern.DOTALL);

  private final Path folder;
  private final String log;

  /** The record of a build in a folder. */
  public BuildRecord(File folder) throws IOException {
    this.folder = folder.toPath();
    this.log = Files.readString(this.folder.resolve("build.log"), UTF_8);
    assertThat(log).as("a stack trace is in the log").doesNotContain("\tat org.headhouse");
    assertThat(log)
        .as("Maven warns of goals that are not made for several threads")
        .doesNotContainIgnoringCase("thread-safe")
        .doesNotContain("@threadSafe");
  }

  /** Expects a text in the log. */
  public void says(String text) {
    assertThat(log).contains(text);
  }

  /** Expects that a text is not in the log. */
  public void saysNot(String text) {
    assertThat(log).doesNotContain(text);
  }

  /**
   * What Maven prints at the end of the build as reasons for its failure, without its own marks.
   */
  public List<String> failures() {
    return FAILURE
        .matcher(log)
        .results()
        .map(MatchResult::group)
        .map(text -> text.replaceAll("(?m)^\\[ERROR\\] ", ""))
        .toList();
  }

  /** Expects that a module failed, and the texts in what Maven prints of it. */
  public void fails(String module, String... texts) {
    List<String> reasons =
        failures().stream().filter(text -> text.contains("on project " + module + ": ")).toList();
    assertThat(reasons).as("failures of %s among %s", module, failures()).hasSize(1);
    assertThat(reasons.get(0)).contains(texts);
  }

  /** Expects that the linter did not fail in a module. */
  public void passes(String module) {
    assertThat(failures()).noneMatch(text -> text.contains("on project " + module + ": "));
  }

  /**
   * Reads both files of results, which have to be well formed and to agree on the failures.
   *
   * @return of each result of the SARIF file, {@code file:line:column: level [rule]}
   */
  public List<String> results(String outputDirectory) throws Exception {
    Path output = folder.resolve(outputDirectory);
    JsonNode run =
        new JsonMapper().readTree(output.resolve("results.sarif").toFile()).at("/runs/0");
    assertThat(run.at("/tool/driver/rules").size()).as("rules in SARIF").isPositive();
    List<String> results = new ArrayList<>();
    for (JsonNode result : run.get("results")) {
      if (result.path("baselineState").asText("").equals("absent")) {
        continue;
      }
      JsonNode place = result.at("/locations/0/physicalLocation");
      results.add(
          fromModule(outputDirectory, place.at("/artifactLocation"))
              + ":"
              + place.at("/region/startLine").asInt()
              + ":"
              + place.at("/region/startColumn").asInt()
              + ": "
              + result.get("level").asText()
              + " ["
              + result.get("ruleId").asText()
              + "]");
    }
    Element suite = suite(output.resolve("results-junit.xml"));
    long cases = results.stream().map(BuildRecord::fileAndRule).distinct().count();
    assertThat(suite.getElementsByTagName("testcase").getLength())
        .as("test cases in XML: one for each rule in a file, for each trouble, and for all sites")
        .isEqualTo((int) cases + suite.getElementsByTagName("error").getLength() + 1);
    try (Stream<Path> files = Files.list(output)) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .as("files written")
          .contains("results.sarif", "results-junit.xml")
          .noneMatch(name -> name.endsWith(".part"));
    }
    return results;
  }

  /**
   * The name of a file from the module. SARIF has it from the root of the repository, where there
   * is one around the build, and a host looks for it there.
   */
  private String fromModule(String outputDirectory, JsonNode artifact) {
    String name = URI.create(artifact.get("uri").asText()).getPath();
    Path root = folder.toAbsolutePath();
    while (root != null && !Files.exists(root.resolve(".git"))) {
      root = root.getParent();
    }
    boolean inside = root != null && !name.startsWith("<") && !name.startsWith("/");
    assertThat(artifact.has("uriBaseId")).as("whether %s is from the root", name).isEqualTo(inside);
    if (!inside) {
      return name;
    }
    Path file = requireNonNull(root).resolve(name);
    assertThat(file).as("a file of SARIF, from the root of the repository").exists();
    int target = outputDirectory.indexOf("target");
    Path module =
        folder.toAbsolutePath().resolve(target < 0 ? "" : outputDirectory.substring(0, target));
    return module.normalize().relativize(file).toString().replace(File.separatorChar, '/');
  }

  /**
   * Reads the figures, which have to be whole JSON with nothing left beside it.
   *
   * @return of each site what its JSON object has, as maps and lists
   */
  public List<?> figures(String outputDirectory) throws IOException {
    Path output = folder.resolve(outputDirectory);
    try (Stream<Path> files = Files.list(output)) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .as("files written")
          .contains("figures.json")
          .noneMatch(name -> name.endsWith(".part"));
    }
    Map<?, ?> all = new JsonMapper().readValue(output.resolve("figures.json").toFile(), Map.class);
    assertThat(all.keySet()).hasToString("[sites]");
    return (List<?>) requireNonNull(all.get("sites"));
  }

  private static String fileAndRule(String result) {
    return result.replaceAll(":\\d+:\\d+: \\w+ ", " ");
  }

  /** How many test cases of the XML file failed. */
  public int failedCases(String outputDirectory) throws Exception {
    Element suite = suite(folder.resolve(outputDirectory).resolve("results-junit.xml"));
    int failed = suite.getElementsByTagName("failure").getLength();
    assertThat(suite.getAttribute("failures")).isEqualTo(String.valueOf(failed));
    return failed;
  }

  private static Element suite(Path file) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(file.toFile())
        .getDocumentElement();
  }

  /**
   * Where a text stands in a file of the build, found here without the linter.
   *
   * @param nth which occurrence, from 1
   * @return {@code line:column}, from 1
   */
  public String place(String file, String text, int nth) throws IOException {
    String content = Files.readString(folder.resolve(file), UTF_8);
    int at = -1;
    for (int found = 0; found < nth; found++) {
      at = content.indexOf(text, at + 1);
      assertThat(at).as("occurrence %d of %s in %s", found + 1, text, file).isNotNegative();
    }
    String before = content.substring(0, at);
    return (before.chars().filter(c -> c == '\n').count() + 1)
        + ":"
        + (at - before.lastIndexOf('\n'));
  }
}
