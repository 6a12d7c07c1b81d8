package org.headhouse.linter.repository;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.EditedSite;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rules on changes find a site again though its file and its id are new, and miss one that is gone.
 */
class LostSitesTest {
  private static final String OTHER =
      "format: 1\nsite: palms\nstage: planned\nchain:\n  - unit: Palm House\n    role: head\n";

  private static String live(String id, String... edits) {
    String[] all =
        Stream.concat(Stream.of("site.site = " + id, "site.stage = commissioned"), Stream.of(edits))
            .toArray(String[]::new);
    return new EditedSite(all).toString();
  }

  private static Stream<SiteInput> inputs(Map<String, String> files) {
    return new TreeMap<>(files)
        .entrySet().stream().map(file -> SiteInput.text(file.getKey(), file.getValue()));
  }

  private static List<String> changes(
      Map<String, String> before, Map<String, String> after, boolean all) throws IOException {
    SiteState state = SiteState.of(inputs(before), null);
    SiteLinter.Builder builder = SiteLinter.builder();
    SiteLinter linter = (all ? builder.beforeAll(state) : builder.before(state)).build();
    CheckReport report = linter.check(inputs(after));
    assertThat(report.notifications()).isEmpty();
    return report.at(Level.NOTE).stream()
        .filter(result -> result.rule().startsWith("change."))
        .map(TextReport::inOneLine)
        .map(line -> line.replaceFirst(":[0-9]+:[0-9]+: warning: ", ": "))
        .toList();
  }

  private static List<String> changes(Map<String, String> before, Map<String, String> after)
      throws IOException {
    return changes(before, after, true);
  }

  @ParameterizedTest
  @CsvSource({
    "a.yaml, a",
    "b.yaml, a",
    "a.yaml, b",
    "b.yaml, b",
    "north/b.yaml, c",
  })
  void aUnitThatGotAnotherAddress(String file, String id) throws IOException {
    String moved = live(id, "Bay 3.address = 4", "Bay 4.address = 3");
    assertThat(changes(Map.of("a.yaml", live("a")), Map.of(file, moved)))
        .hasSize(2)
        .allMatch(line -> line.startsWith(file + ": the live unit"));
  }

  /** Without all sites of the later state nobody knows which are gone. */
  @Test
  void ofSomeFilesNoneIsGone() throws IOException {
    assertThat(changes(Map.of("a.yaml", live("a")), Map.of("palms.yaml", OTHER), false)).isEmpty();
  }

  @Test
  void aSiteThatIsGone() throws IOException {
    assertThat(changes(Map.of("a.yaml", live("a")), Map.of("palms.yaml", OTHER)))
        .containsExactly(
            "a.yaml: the commissioned site \"a\" has no file any more: its line is still wired,"
                + " but nobody checks it or can look up its addresses any more; put the file"
                + " back; leave it"
                + " out only once the line is taken down [change.commissioned-removed]");
    assertThat(
            changes(
                Map.of("a.yaml", live("a").replace("commissioned", "planned")),
                Map.of("palms.yaml", OTHER)))
        .isEmpty();
  }

  /** The file of the one that is gone holds another that was there before. */
  @Test
  void anotherSiteInTheFileOfTheOneThatIsGone() throws IOException {
    Map<String, String> before = Map.of("a.yaml", live("a"), "palms.yaml", OTHER);
    assertThat(changes(before, Map.of("a.yaml", OTHER)))
        .singleElement()
        .asString()
        .startsWith("a.yaml: the commissioned site \"a\" has no file any more");
  }

  /** The likelier one of two is the renamed one. */
  @Test
  void theLikelierOfTwo() throws IOException {
    String moved = live("c", "Bay 3.address = 4", "Bay 4.address = 3");
    String less =
        live("d", "Bay 2 = -", "Bay 3 = -", "Mist House.role = follower", "Mist House.address = 9");
    assertThat(changes(Map.of("a.yaml", live("a")), Map.of("b.yaml", less, "c.yaml", moved)))
        .hasSize(2)
        .allMatch(line -> line.startsWith("c.yaml: the live unit"));
  }

  /** What a suppression is for is known once the earlier state is. */
  @Test
  void aSuppressionOfAChangeIsUsed() throws IOException {
    String moved =
        live("b", "Bay 3.address = 4", "Bay 4.address = 3")
            + "suppressions: [{rule: change.commissioned-readdressed, justification: Done on site.}]\n";
    assertThat(changes(Map.of("a.yaml", live("a")), Map.of("b.yaml", moved))).isEmpty();
  }
}
