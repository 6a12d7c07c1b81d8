package org.headhouse.linter.rules;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.check.CleanFiles;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code network.duplicate-ip} and {@code supervision.zone-duplicate} over several files. */
class SitesOfOneCustomerTest {
  private static final String ZONES =
      "supervision: {link: serial, zones: [%1$s Head, %1$s Mist, %1$s Bench]}\n";

  /**
   * A site whose units and addresses are its own.
   *
   * @param name of the site, which its units have in their names
   */
  private static String site(String name, String customer, int network) {
    return Example.SITE
            .replace("site: example\n", "site: " + name + "\ncustomer: " + customer + "\n")
            .replace("Propagation", name + " Head")
            .replace("Seedling North", name + " Mist")
            .replace("Hardening Bay", name + " Bench")
            .replace(
                "    termination: none\n",
                "    termination: none\n    network: {ip: 192.168." + network + ".12/24}\n")
        + ZONES.formatted(name);
  }

  private static List<String> told(String first, String second) throws IOException {
    return results(SiteLinter.builder(), first, second).stream()
        .map(result -> result.level().word() + " " + result.rule())
        .toList();
  }

  private static List<Result> results(SiteLinter.Builder linter, String first, String second)
      throws IOException {
    return linter
        .clock(Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC))
        .build()
        .check(Stream.of(text(first), text(second)))
        .results();
  }

  private static SiteInput text(String site) {
    String id = site.substring(site.indexOf("site: ") + 6, site.indexOf("\n", 12));
    return SiteInput.text(id + ".yaml", site);
  }

  @Test
  void theSecondPointsIntoTheFirstFile() throws IOException {
    List<Result> results =
        results(SiteLinter.builder(), site("east", "ours", 40), site("west", "ours", 40));
    assertThat(results).hasSize(1);
    Result result = results.get(0);
    assertThat(result.location().file()).isEqualTo("west.yaml");
    assertThat(result.location().line()).isEqualTo("    network: {ip: 192.168.40.12/24}");
    assertThat(result.message().fact())
        .isEqualTo("the IP address 192.168.40.12 is also used at another site of this customer");
    RelatedLocation first = result.related().get(0);
    assertThat(first.location().file()).isEqualTo("east.yaml");
    assertThat(first.location().line()).isEqualTo("    network: {ip: 192.168.40.12/24}");
    assertThat(first.text()).isEqualTo("192.168.40.12 is first used here");
  }

  /** What of the second site is as in the first, and what comes of it. */
  @ParameterizedTest
  @CsvSource({
    "'', '', ''",
    "192.168.41.12/24, 192.168.40.12/24, warning network.duplicate-ip",
    "192.168.41.12/24, 192.168.40.0/24, error network.bad-address",
    "'west Mist', 'east Mist', warning supervision.zone-duplicate",
    "'customer: ours', 'customer: theirs', ''",
  })
  void oneCustomer(String text, String other, String told) throws IOException {
    String second = site("west", "ours", 41).replace(text.isEmpty() ? "?" : text, other);
    assertThat(told(site("east", "ours", 40), second))
        .isEqualTo(told.isEmpty() ? List.of() : List.of(told));
  }

  /** Private addresses (RFC 1918) are the same everywhere, and names such as "Mist House" too. */
  @ParameterizedTest
  @CsvSource({"customer: ours, customer: theirs", "customer: ours, ''"})
  void otherCustomersAndSitesOfNobody(String customer, String other) throws IOException {
    String first = site("east", "ours", 40).replace("east Mist", "Mist House");
    String second = site("west", "ours", 40).replace("west Mist", "Mist House");
    assertThat(told(first, second))
        .containsExactly("warning network.duplicate-ip", "warning supervision.zone-duplicate");
    assertThat(told(first, second.replace(customer, other))).isEmpty();
    assertThat(told(first.replace(customer, other), second)).isEmpty();
  }

  /** As in name.duplicate: a person reads both as one name, whatever its case and its spaces. */
  @ParameterizedTest
  @CsvSource({
    "East Mist, true",
    "EAST  MIST, true",
    "\uff45ast Mist, true",
    "east Mists, false",
    "eastMist, false",
  })
  void zonesThatDifferOnlyInCaseAreTheSame(String name, boolean same) throws IOException {
    String second = site("west", "ours", 41).replace("west Mist", name);
    List<Result> results = results(SiteLinter.builder(), site("east", "ours", 40), second);
    assertThat(results).extracting(Result::rule).hasSize(same ? 1 : 0);
    if (same) {
      Result result = results.get(0);
      assertThat(result.rule()).isEqualTo("supervision.zone-duplicate");
      assertThat(result.message().fact())
          .isEqualTo("the zone \"" + name + "\" is also listed at another site of this customer");
      assertThat(result.related().get(0).text()).isEqualTo("\"east Mist\" is first listed here");
    }
  }

  /** Within one file, such names are reported as those of units; the file is no other site. */
  @Test
  void oneFileDoesNotClashWithItself() throws IOException {
    String twice = site("west", "ours", 41).replace("west Bench", "West mist");
    assertThat(told(site("east", "ours", 40), twice)).containsExactly("error name.duplicate");
    assertThat(told(twice, site("east", "ours", 40))).containsExactly("error name.duplicate");
  }

  @Test
  void unitsOfOneNameAreNoZonesWhereASiteHasNoSupervision() throws IOException {
    String first = site("east", "ours", 40).replace("east Mist", "Mist House");
    String second = site("west", "ours", 41).replace("west Mist", "Mist House");
    String zones = ZONES.formatted("west").replace("west Mist", "Mist House");
    assertThat(told(first, second)).containsExactly("warning supervision.zone-duplicate");
    assertThat(told(first, second.replace(zones, ""))).isEmpty();
  }

  /** One mistake: the same site twice. */
  @Test
  void aSiteThatIsThereTwiceHasItsOwnResult() throws IOException {
    String site = site("east", "ours", 40);
    List<Result> results =
        SiteLinter.builder()
            .build()
            .check(
                Stream.of(
                    SiteInput.text("east.yaml", site), SiteInput.text("old/east/site.yaml", site)))
            .results();
    assertThat(results).extracting(Result::rule).containsExactly("site.duplicate-id");
  }

  /** Within a file it stays one result, an error. */
  @Test
  void twiceInOneFile() throws IOException {
    String twice =
        site("west", "ours", 41)
            .replace(
                "    outdoor: {light: local, temperature: local}\n",
                """
                    outdoor: {light: local, temperature: local}
                    network: {ip: 192.168.41.12/24}
                """);
    assertThat(told(site("east", "ours", 40), twice)).containsExactly("error network.duplicate-ip");
    assertThat(told(twice, site("east", "ours", 40))).containsExactly("error network.duplicate-ip");
    assertThat(told(site("east", "ours", 41), twice))
        .containsExactly("warning network.duplicate-ip", "error network.duplicate-ip");
  }

  @Test
  void theUnitThatIsConcernedCanBeSuppressed() throws IOException {
    String second =
        site("west", "ours", 40)
            + "suppressions: [{rule: network.duplicate-ip, unit: west Mist, justification: Two"
            + " networks that nothing joins.}]\n";
    assertThat(results(SiteLinter.builder(), site("east", "ours", 40), second))
        .singleElement()
        .satisfies(result -> assertThat(result.suppressed()).isTrue());
    assertThat(
            told(
                site("east", "ours", 40),
                second.replace("unit: west Mist, j", "unit: west Head, j")))
        .containsExactly("warning network.duplicate-ip", "warning suppression.unused");
  }

  @Test
  void thePolicyCanSwitchItOff() throws IOException {
    SiteInput policy =
        SiteInput.text(
            "linter.yaml",
            "format: 1\nrule-set: 1\nrules: {network.duplicate-ip: {level: none}}\n");
    String first = site("east", "ours", 40);
    String second = site("west", "ours", 40);
    assertThat(results(SiteLinter.builder().policy(policy), first, second)).isEmpty();
  }

  /** The first file has not changed since a check found it clean; the second has. */
  @Test
  void aFileThatWasCleanBeforeIsStillComparedWith() throws IOException {
    String east = site("east", "ours", 40);
    CleanFiles[] kept = {new CleanFiles(new byte[32], "", new byte[0])};
    SiteLinter.Builder linter =
        SiteLinter.builder()
            .cleanFiles(
                validity -> kept[0] = new CleanFiles(new byte[32], validity, kept[0].sealed()));
    assertThat(results(linter, east, site("west", "ours", 41))).isEmpty();
    byte[] afterTheFirst = kept[0].sealed();
    assertThat(new String(afterTheFirst, UTF_8))
        .contains("east.yaml", "ours 192.168.40.12", "ours west Bench");
    String west = site("west", "ours", 40).replace("west Mist", "east Mist");
    assertThat(results(linter, east, west))
        .isEqualTo(results(SiteLinter.builder(), east, west))
        .extracting(Result::rule)
        .containsExactly("network.duplicate-ip", "supervision.zone-duplicate");
    // And the other way round, where the file that was clean before comes later.
    kept[0] = new CleanFiles(new byte[32], "", new byte[0]);
    assertThat(results(linter, site("west", "ours", 41), east)).isEmpty();
    assertThat(results(linter, west, east))
        .isEqualTo(results(SiteLinter.builder(), west, east))
        .extracting(Result::location)
        .extracting("file")
        .containsOnly("east.yaml");
  }
}
