package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The file of a site is the same, and that of the device types is not: common practice, no source.
 */
class TypeFactsTest {
  private static final String SITE =
      """
      format: 1
      site: example
      stage: commissioned
      weather-station: {at: Head House, readings: [light]}
      line: {baud: 9600, parity: even, stop-bits: 1}
      chain:
        - {unit: Head House, role: head, address: 1, device-type: large, termination: 120 ohm, vents: none, outdoor: {light: local}, cable-to-next: 30 m}
        - {unit: Palms, role: follower, address: 2, device-type: small, vents: none, outdoor: {light: head}, cable-to-next: 30 m}
        - {equipment: Meter, address: 57, device-type: small, unit-load: 1, cable-to-next: 30 m}
        - {unit: Ferns, role: follower, address: 3, device-type: large, termination: 120 ohm, vents: none, outdoor: {light: head}}
      commissioning: {date: 2026-03-14, by: R.O.}
      """;

  private static final String TYPES =
      """
      format: 1
      device-types:
        - {id: small, title: Small, unit-load: 1/8, rise-time: 100 ns, terminals: {positive: D+}}
        - {id: large, title: Large, idle-bias: not-needed, isolated: true}
        - {id: unused, unit-load: 1}
      """;

  private static Node.Valued root(String text) {
    return Objects.requireNonNull(
        new YamlReader(Limits.DEFAULT).read(new SourceText("file.yaml", text)).root());
  }

  private static DeviceTypes types(String text) {
    return DeviceTypesBinder.bind(new SourceText("file.yaml", text), root(text)).model();
  }

  private static Site site(String types) {
    return SiteBinder.bind(new SourceText("file.yaml", SITE), root(SITE), types(types)).model();
  }

  private static List<Difference> differences(String text, String other) {
    assertThat(TYPES).contains(text);
    return SiteDifferences.between(site(TYPES), site(TYPES.replace(text, other)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "id: small           | id: small, positive-terminal: A | small, positive-terminal, B, A",
        "id: small           | id: small, positive-terminal: B | ''",
        "positive: D+        | positive: TX+                   | small, terminals.positive, D+, TX+",
        "unit-load: 1/8      | unit-load: 1/4                  | small, unit-load, 0.125, 0.25",
        "idle-bias: not-needed | idle-bias: needed             | large, idle-bias, not-needed, needed",
        "isolated: true      | isolated: false                 | large, isolated, true, false",
        // What decides nothing of the line, and what the line does not have.
        "title: Small        | title: Other                    | ''",
        "rise-time: 100 ns   | rise-time: 200 ns               | ''",
        "unit-load: 1}       | unit-load: 1/4}                 | ''",
      })
  void whatDecidesTheLineIsADifference(String text, String other, String expected) {
    assertThat(
            differences(text, other).stream()
                .map(Difference.TypeSet.class::cast)
                .map(
                    one ->
                        String.join(
                            ", ",
                            one.type(),
                            one.setting().what(),
                            one.setting().from(),
                            one.setting().to())))
        .containsExactlyElementsOf(expected.isEmpty() ? List.of() : List.of(expected));
  }

  /** An item that says its own load has that, whatever its type has. */
  @Test
  void whatEveryItemSaysItselfIsNoDifference() {
    String own = SITE.replace("2, device-type: small", "2, device-type: large");
    Site before = SiteBinder.bind(new SourceText("", own), root(own), types(TYPES)).model();
    Site after =
        SiteBinder.bind(
                new SourceText("", own),
                root(own),
                types(TYPES.replace("unit-load: 1/8", "unit-load: 1/4")))
            .model();
    assertThat(SiteDifferences.between(before, after)).isEmpty();
  }

  /** A type that is not there at all is another finding, and no other way of landing. */
  @Test
  void anUnknownTypeIsComparedWithNothing() {
    assertThat(differences("id: small", "id: else, positive-terminal: A")).isEmpty();
  }

  @Test
  void whatTheFactDecidesIsProvedAgain() {
    List<Difference> small = differences("id: small", "id: small, positive-terminal: A");
    assertThat(ReprovingCheck.isDue(small)).isTrue();
    Site after = site(TYPES.replace("id: small", "id: small, positive-terminal: A"));
    assertThat(DueProofs.of(after, small))
        .contains(new Proof(Proof.Kind.READINGS, "Palms", null))
        .doesNotContain(new Proof(Proof.Kind.READINGS, "Ferns", null));
    // The pair is landed at all units by what the head unit needs.
    assertThat(
            DueProofs.concernsAll(
                after, differences("id: large", "id: large, positive-terminal: A")))
        .isTrue();
    // What is noted for the first time says that somebody read a manual.
    assertThat(ReprovingCheck.isDue(differences("id: small", "id: small, isolated: true")))
        .isFalse();
  }

  @Test
  void thePlanSaysWhatToLookAt() {
    SiteChange.Changed changed =
        SiteComparison.of(
            site(TYPES),
            site(TYPES.replace("id: small", "id: small, positive-terminal: A")),
            ExcludedAddresses.NONE);
    assertThat(((FieldWork.Plan) changed.work()).remarks())
        .contains(
            "The device types say positive-terminal: A of the type \"small\", and before B: see in"
                + " its manual which is right, and whether \"Palms\", \"Meter\" are landed by it."
                + " Isolate and lock off the supply before you open a unit.");
    SiteChange.Changed noted =
        SiteComparison.of(
            site(TYPES),
            site(TYPES.replace("id: small", "id: small, isolated: true")),
            ExcludedAddresses.NONE);
    assertThat(((FieldWork.Plan) noted.work()).remarks())
        .noneMatch(one -> one.contains("device types"));
    assertThat(changed.consequences())
        .anyMatch(one -> one.kind() == Consequence.Kind.RECORD && one.text().contains("\"Palms\""));
  }
}
