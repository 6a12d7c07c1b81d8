package org.headhouse.linter.repository;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Checks;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.report.ChangeJson;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;

/** Sites found again in another state of the repository, and what is told of them. */
class SiteChangesTest {
  private static final String SITE =
      new SiteText()
          .bias("Head House", "510 ohm", "5 V")
          .unit("120 ohm", "30 m")
          .unit("120 ohm", "")
          .toString();

  private static String site(String id) {
    return SITE.replace("site: example", "site: " + id);
  }

  private static SiteState state(Map<String, String> files) throws IOException {
    return SiteState.of(
        new TreeMap<>(files)
            .entrySet().stream().map(file -> SiteInput.text(file.getKey(), file.getValue())),
        null);
  }

  private static List<String> kinds(Map<String, String> before, Map<String, String> after)
      throws IOException {
    return Checks.linter().changes(state(before), state(after)).stream()
        .map(SiteChangesTest::told)
        .toList();
  }

  private static String told(SiteChange change) {
    String file = change.file();
    return change.getClass().getSimpleName()
        + " "
        + change.site()
        + " "
        + (change instanceof SiteChange.Changed changed && !changed.earlierFile().equals(file)
            ? changed.earlierFile() + " > "
            : "")
        + file;
  }

  @Test
  void whatIsTheSameIsNotTold() throws IOException {
    Map<String, String> files = Map.of("a.yaml", site("a"), "b.yaml", site("b"));
    assertThat(kinds(files, files)).isEmpty();
  }

  @Test
  void sitesAreFoundByIdWhateverTheirFileIsCalled() throws IOException {
    assertThat(
            kinds(
                Map.of("a.yaml", site("a"), "b.yaml", site("b"), "c.yaml", site("c")),
                Map.of("b.yaml", site("a") + "# moved", "d.yaml", site("d"), "c.yaml", site("c"))))
        .containsExactly("Changed a a.yaml > b.yaml", "Changed d b.yaml > d.yaml");
  }

  /** Whose file and id are both new is found by what it has in common, if that is half of it. */
  @Test
  void sitesAreFoundByWhatTheyHaveInCommon() throws IOException {
    String other =
        "format: 1\nsite: e\nstage: planned\nchain:\n  - unit: Palm House\n    role: head\n";
    assertThat(
            kinds(
                Map.of("a.yaml", site("a"), "b.yaml", site("b"), "c.yaml", site("c")),
                Map.of("a.yaml", site("a"), "e.yaml", other, "f.yaml", site("f") + "# moved")))
        .containsExactly("Added e e.yaml", "Changed f b.yaml > f.yaml", "Removed c c.yaml");
  }

  /** A copy of a site is no other site that was renamed. */
  @Test
  void aCopyIsNoRenamedSite() throws IOException {
    assertThat(
            kinds(
                Map.of("a.yaml", site("a"), "b.yaml", site("b")),
                Map.of("a.yaml", site("a"), "c.yaml", site("a"))))
        .containsExactly("Added a c.yaml", "Removed b b.yaml");
  }

  /** A site that got another id is found by its file. */
  @Test
  void thenByTheirFile() throws IOException {
    assertThat(
            kinds(
                Map.of("a.yaml", site("a"), "b.yaml", site("b")),
                Map.of("a.yaml", site("z"), "b.yaml", site("b"))))
        .containsExactly("Changed z a.yaml");
  }

  @Test
  void aCopyIsNotTakenForTheSite() throws IOException {
    assertThat(kinds(Map.of("b.yaml", site("b")), Map.of("a.yaml", site("b"), "b.yaml", site("b"))))
        .containsExactly("Added b a.yaml");
  }

  @Test
  void twoSinglesAreComparedWhateverTheyAreCalled() throws IOException {
    assertThat(kinds(Map.of("old/a.yaml", site("a")), Map.of("new/b.yaml", site("b"))))
        .containsExactly("Changed b old/a.yaml > new/b.yaml");
  }

  @Test
  void whatCannotBeReadIsTold() throws IOException {
    assertThat(
            kinds(
                Map.of("a.yaml", "site: [", "b.yaml", site("b")),
                Map.of("a.yaml", site("a"), "b.yaml", "site: [")))
        .containsExactly("Unreadable a a.yaml", "Unreadable b.yaml b.yaml");
  }

  /** Names of units are text on the page, and nothing else. */
  @Test
  void namesDoNotGarbleThePage() throws IOException {
    String odd = SITE.replace("unit: Bay 2", "unit: \"*Bay* <b> [2](x)\\u202E\"");
    List<SiteChange> changes =
        Checks.linter().changes(state(Map.of("a.yaml", SITE)), state(Map.of("a.yaml", odd)));
    assertThat(ChangeReport.markdown("then", changes))
        .contains("- \"\\*Bay\\* \\<b\\> \\[2\\](x)\uFFFD\" was called \"Bay 2\"");
    assertThat(ChangeReport.text("then", changes)).noneMatch(line -> line.contains("\u202E"));
  }

  @Test
  void programsReadTheSteps() throws IOException {
    List<SiteChange> changes =
        Checks.linter()
            .changes(
                state(Map.of("a.yaml", SITE)),
                state(Map.of("a.yaml", SITE.replace("address: 2", "address: 9"))));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ChangeJson.write("then", changes, out);
    JsonNode site = JsonText.read(out.toString(UTF_8)).at("/sites/0");
    assertThat(site.at("/differences/0/kind").asText()).isEqualTo("readdressed");
    JsonNode step = site.at("/steps/0");
    assertThat(step.at("/kind").asText()).isEqualTo("set-address");
    assertThat(step.at("/unit").asText()).isEqualTo("Bay 2");
    assertThat(step.at("/from").asInt()).isEqualTo(2);
    assertThat(step.at("/to").asInt()).isEqualTo(9);
    assertThat(site.at("/steps").size()).isEqualTo(1);
  }

  /** Without an earlier state nobody can tell whether the entry is needed. */
  @Test
  void anAcceptedChangeIsNotUnusedWhereNothingIsCompared() throws IOException {
    String accepted =
        SITE
            + "suppressions:\n"
            + "  - {rule: change.commissioned-readdressed, justification: Agreed with the grower.}\n";
    assertThat(Checks.linter().checkText("example.yaml", accepted).results()).isEmpty();
    SiteLinter comparing = SiteLinter.builder().before(state(Map.of("example.yaml", SITE))).build();
    assertThat(comparing.checkText("example.yaml", accepted).results())
        .extracting(Result::rule)
        .containsExactly("suppression.unused");
  }

  /** A clash stays told where the other of the two files has changed. */
  @Test
  void aReportOfSomeFilesKeepsWhatTheyBrought() throws IOException {
    CheckReport report =
        Checks.linter()
            .check(
                Stream.of(
                    SiteInput.text("a/example.yaml", SITE),
                    SiteInput.text("b/example.yaml", SITE),
                    SiteInput.text("c.yaml", "site: [")));
    assertThat(report.only(Set.of("a/example.yaml")).results())
        .extracting(Result::rule)
        .containsExactly("site.duplicate-id");
    assertThat(report.only(Set.of()).results()).isEmpty();
  }
}
