package example.nursery.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.junit.jupiter.api.Test;

class LongRunTest {
  private static final String SITE =
      """
      format: 1
      site: elm-row
      stage: planned
      weather-station: {at: Propagation, readings: [light, temperature]}
      line: {baud: 9600, parity: even, stop-bits: 1, cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}}
      chain:
        - unit: Propagation
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm + 1 nF
          outdoor: {light: local, temperature: local}
          cable-to-next: %s
        - unit: Hardening Bay
          role: follower
          address: 2
          comm-module: fitted
          conductors: [A, B]
          termination: 120 ohm + 1 nF
          outdoor: {light: head, temperature: head}
      """;

  private static List<String> results(String run, String policy) throws IOException {
    SiteLinter.Builder builder = SiteLinter.builder().rule(new LongRun());
    if (!policy.isEmpty()) {
      builder.policy(SiteInput.text("linter.yaml", policy));
    }
    CheckReport report = builder.build().checkText("elm-row.yaml", SITE.formatted(run));
    assertTrue(report.notifications().isEmpty(), report.notifications()::toString);
    return report.results().stream().map(TextReport::headline).toList();
  }

  @Test
  void aRunThatADrumHasIsNoResult() throws IOException {
    assertEquals(List.of(), results("100 m", ""));
    assertEquals(List.of(), results("328 ft", ""));
  }

  @Test
  void aLongerOneIsToldAtItsPlace() throws IOException {
    List<String> results = results("101 m", "");
    assertEquals(1, results.size(), results::toString);
    assertTrue(
        results
            .get(0)
            .startsWith(
                "elm-row.yaml:14:20: warning: the run behind \"Propagation\" is 101 m"));
    assertTrue(results.get(0).endsWith("[nursery.long-run]"));
  }

  @Test
  void thePolicySetsTheDrum() throws IOException {
    String policy =
        "{format: 1, rule-set: 1, rules: {nursery.long-run: {parameters: {drum: 200 m}}}}";
    assertEquals(List.of(), results("101 m", policy));
  }

  @Test
  void hasAPage() throws IOException {
    assertTrue(
        SiteLinter.builder()
            .rule(new LongRun())
            .build()
            .page("nursery.long-run")
            .orElse("")
            .startsWith("# nursery.long-run\n"));
  }
}
