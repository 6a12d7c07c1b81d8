package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the page on customers shows is what its POM finds in its files. */
class CustomersPageTest {
  private static final Path PAGE = Path.of("../linter-core/docs/customers.md");

  private static final Pattern EXECUTION =
      Pattern.compile(
          "<id>(.*?)</id>.*?<sites>(.*?)</sites>.*?<outputDirectory>(.*?)</outputDirectory>",
          Pattern.DOTALL);

  @TempDir private Path folder;

  private static String block(String mark) throws IOException {
    Matcher matcher =
        Pattern.compile("<!-- " + Pattern.quote(mark) + " -->\n```[a-z]+\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(PAGE));
    assertThat(matcher.find()).as(mark).isTrue();
    return matcher.group(1);
  }

  private void write(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  private Path resolved(String written) {
    return Path.of(
        written
            .replace("${project.basedir}", folder.toString())
            .replace("${project.build.directory}", folder.resolve("target").toString()));
  }

  /** The results that each execution of the POM prints. */
  private Map<String, List<String>> executions() throws Exception {
    Map<String, List<String>> results = new LinkedHashMap<>();
    Matcher execution = EXECUTION.matcher(block("example: pom"));
    while (execution.find()) {
      GoalRun run =
          new GoalRun(new CheckMojo(), folder)
              .with("sites", resolved(execution.group(2)).toFile())
              .with("outputDirectory", resolved(execution.group(3)).toFile());
      try {
        run.execute();
      } catch (MojoFailureException broken) {
        assertThat(broken).hasMessageContaining("customers/" + execution.group(1) + "/sites/");
      }
      List<String> lines = new ArrayList<>();
      for (String line : run.lines()) {
        Matcher result = Pattern.compile("customers/.*\\.yaml:.*\\]$").matcher(line);
        if (result.find()) {
          lines.add(result.group());
        }
      }
      results.put(execution.group(1), lines);
    }
    return results;
  }

  @Test
  void eachCustomerIsCheckedByItsOwnRules() throws Exception {
    String alder = block("example: alder-mill");
    write("pom.xml", block("example: pom"));
    write("customers/alder/linter.yaml", block("example: alder-policy"));
    write("customers/rowan/linter.yaml", block("example: rowan-policy"));
    write("customers/alder/sites/alder-mill.yaml", alder);
    write(
        "customers/rowan/sites/rowan-court.yaml",
        alder.replace("alder-mill", "rowan-court").replace("customer: alder", "customer: rowan"));
    Map<String, List<String>> results = executions();
    assertThat(results.keySet()).containsExactly("alder", "rowan");
    assertThat(results.get("alder")).isEmpty();
    assertThat(results.get("rowan"))
        .containsExactlyElementsOf(block("output: rowan").lines().toList());
  }

  /** A policy that is sent along with a site loosens nothing. */
  @Test
  void aPolicyBesideASiteIsNotRead() throws Exception {
    write("customers/alder/linter.yaml", block("example: alder-policy"));
    write("customers/rowan/linter.yaml", block("example: rowan-policy"));
    write("customers/alder/sites/alder-mill.yaml", block("example: alder-mill"));
    write(
        "customers/rowan/sites/new/rowan-court.yaml",
        block("example: alder-mill").replace("alder-mill", "rowan-court"));
    write(
        "customers/rowan/sites/new/linter.yaml",
        "format: 1\nrule-set: 1\nrules: {name.pattern: {level: none}}\n");
    assertThat(executions().get("rowan")).anyMatch(line -> line.endsWith("[name.pattern]"));
  }
}
