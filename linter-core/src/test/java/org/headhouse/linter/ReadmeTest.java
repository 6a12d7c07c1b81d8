package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is true. */
class ReadmeTest {
  private static final Path README = Path.of("../README.md");

  @Test
  void theExamplesAreClean() throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .policy(SiteInput.text("linter.yaml", example("policy")))
            .deviceTypes(SiteInput.text("device-types.yaml", example("device-types")))
            .build()
            .checkText("alder-brook.yaml", example("site"));
    // The policy of the example lands ground at every unit, which the site of the example does not.
    assertThat(report.results()).extracting(Result::rule).containsOnly("conductors.ground");
    assertThat(report.notifications()).isEmpty();
  }

  @Test
  void theProgramIsTheOneThatIsCompiledHere(@TempDir Path folder) throws IOException {
    String program =
        Files.readString(Path.of("src/test/java/org/headhouse/linter/ReadmeTest.java"))
            .split("// from here\n", 2)[1]
            .split(" *// to here", 2)[0];
    assertThat(program.replace("folder.resolve", "Path.of"))
        .isEqualToNormalizingWhitespace(example("java"));
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/alder-brook.yaml"), example("site"));
    Files.writeString(folder.resolve("device-types.yaml"), example("device-types"));
    program(folder);
  }

  @SuppressWarnings("SystemOut")
  private static void program(Path folder) throws IOException {
    // from here
    SiteLinter linter =
        SiteLinter.builder().deviceTypes(folder.resolve("device-types.yaml")).build();
    CheckReport report = linter.checkFiles(List.of(folder.resolve("sites/alder-brook.yaml")));
    for (Result result : report.at(Level.WARNING)) {
      System.out.println(TextReport.headline(result));
    }
    // to here
  }

  @Test
  void theResultsShownAreThoseOfTheFaultySite() throws IOException {
    String expected =
        Files.readAllLines(Path.of("../sample-sites/faulty/expected.txt")).stream()
            .filter(line -> line.startsWith("sites/ferncombe.yaml"))
            .collect(Collectors.joining("\n"));
    String shown = example("package", "output", "text");
    Matcher headlines = Pattern.compile("] faulty/(sites.*: error: .*)").matcher(shown);
    assertThat(headlines.results().map(match -> match.group(1)))
        .hasSize(2)
        .allSatisfy(headline -> assertThat(expected).contains(headline));
  }

  private static String example(String name) throws IOException {
    return example(name, "example", "[a-z]+");
  }

  private static String example(String name, String mark, String language) throws IOException {
    Matcher matcher =
        Pattern.compile(
                "<!-- " + mark + ": " + name + " -->\n```" + language + "\n(.*?)```",
                Pattern.DOTALL)
            .matcher(Files.readString(README));
    assertThat(matcher.find()).as("example %s of the README", name).isTrue();
    return matcher.group(1);
  }
}
