package org.headhouse.linter.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.sheet.Sheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every unit of all sites has a row that a spreadsheet can be given. */
class InventoryReportTest {
  private static final String YEARLY =
      """
      format: 1
      rule-set: 1
      rules: {commissioning.retest-due: {parameters: {every: 1 year}}}
      """;

  private static SiteLinter linter(String policy, int threads) throws IOException {
    return SiteLinter.builder()
        .deviceTypes(Sheets.SAMPLE_TYPES)
        .policy(SiteInput.text("linter.yaml", policy))
        .clock(Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC))
        .threads(threads)
        .build();
  }

  private static List<Map<String, String>> units(String... sites) throws IOException {
    return Tables.of(
            linter(YEARLY, 1),
            IntStream.range(0, sites.length)
                .mapToObj(i -> SiteInput.text("site-" + i + "/example.yaml", sites[i])))
        .units();
  }

  private static final String COMMISSIONED =
      Example.with("stage: planned", "customer: example-growers\nstage: commissioned")
              .replace(
                  "address: 2\n",
                  """
                  address: 2
                      device-type: sixteen-way
                      firmware: "4.1"
                      vents: roof
                      serial-number: HH-0042
                      network: {ip: 192.168.40.12/24}
                  """)
          + """
          commissioning:
            date: 2026-03-14
            by: R.O.
            measured: {pair-resistance: 62 ohm, idle-voltage: 0.3 V, elsewhere: [{at: Hardening Bay, pair-resistance: 62 ohm, idle-voltage: 0.28 V}]}
            outdoor-readings-seen: [Seedling North, Hardening Bay]
            storm-response-seen: [Propagation, Seedling North, Hardening Bay]
            stale-response-seen: [Propagation, Seedling North, Hardening Bay]
          """;

  @Test
  void aRowSaysWhatIsAskedOfAUnit() throws Exception {
    assertThat(units(COMMISSIONED).get(1))
        .containsExactlyEntriesOf(
            row(
                "customer=example-growers",
                "site=example",
                "unit=Seedling North",
                "role=follower",
                "address=2",
                "device-type=sixteen-way",
                "firmware=4.1",
                "serial-number=HH-0042",
                "vents=roof",
                "ip=192.168.40.12/24",
                "stage=commissioned",
                "proved-on=2026-03-14",
                "proved-by=R.O.",
                "next-proof=2027-03-14",
                "open-exceptions="));
  }

  private static Map<String, String> row(String... fields) {
    Map<String, String> row = new LinkedHashMap<>();
    for (String field : fields) {
      row.put(field.substring(0, field.indexOf('=')), field.substring(field.indexOf('=') + 1));
    }
    return row;
  }

  @Test
  void everyUnitOfEverySampleHasOne() {
    List<Map<String, String>> units =
        Tables.of(Sheets.linter(1), Sheets.inputs(Sheets.SAMPLES.resolve("sites"))).units();
    // By hand: dunmere 120, kestwell 4, morvane 6, ottermarsh 7, pellbrook-east 9 and -west 5,
    // quillback-hollow 3, sundrel 6, tarnwick 10, varnhollow 7; the repeaters are none.
    assertThat(units).hasSize(120 + 4 + 6 + 7 + 9 + 5 + 3 + 6 + 10 + 7);
    assertThat(units.stream().map(row -> row.get("site")).distinct()).hasSize(10).isSorted();
    assertThat(units.stream().filter(row -> "tarnwick".equals(row.get("site"))))
        .extracting(row -> row.get("unit"))
        .startsWith("Lily West", "Lily East")
        .endsWith("Gerbera East", "Screens");
  }

  /** A record of a line that is planned again proves nothing of it. */
  @Test
  void aPlannedLineHasNoProof() throws Exception {
    assertThat(units(COMMISSIONED.replace("stage: commissioned", "stage: planned")))
        .allSatisfy(
            row ->
                assertThat(row)
                    .containsEntry("proved-on", "")
                    .containsEntry("proved-by", "")
                    .containsEntry("next-proof", ""));
  }

  /** A measurement is missing: whoever filters the table by days has to find the line. */
  @Test
  void aLineInUseThatIsNotProvedIsDueToday() throws Exception {
    assertThat(units(COMMISSIONED.replace("pair-resistance: 62 ohm, idle", "idle")))
        .allSatisfy(
            row ->
                assertThat(row)
                    .containsEntry("proved-on", "")
                    .containsEntry("proved-by", "")
                    .containsEntry("next-proof", "2026-11-25"));
  }

  /** A renewal of a part is no proof of the whole; one of everything is. */
  @Test
  void theWholeLineCounts() throws Exception {
    String part =
        COMMISSIONED
            + "  renewed:\n    - {date: 2026-10-02, by: M.T., reason: one, outdoor-readings-seen: [Hardening Bay]}\n";
    assertThat(units(part).get(0)).containsEntry("proved-on", "2026-03-14");
    String record = COMMISSIONED.substring(COMMISSIONED.indexOf("  measured:")).indent(4);
    String whole =
        COMMISSIONED
            + "  renewed:\n    - date: 2026-10-02\n      by: M.T.\n      reason: yearly\n"
            + record;
    assertThat(units(whole).get(0))
        .containsEntry("proved-on", "2026-10-02")
        .containsEntry("proved-by", "M.T.")
        .containsEntry("next-proof", "2027-10-02");
  }

  @Test
  void withoutAPeriodNothingIsDue() throws Exception {
    SiteLinter silent = linter("format: 1\nrule-set: 1\n", 1);
    assertThat(Tables.of(silent, Stream.of(SiteInput.text("example.yaml", COMMISSIONED))).units())
        .allSatisfy(row -> assertThat(row).containsEntry("next-proof", ""));
  }

  /** As on 2026-11-25. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rule: address.gap, unit: Seedling North, until: 2027-04-01 | '' | address.gap until 2027-04-01",
        "rule: address.gap, unit: Seedling North, until: 2026-11-25 | '' | address.gap until 2026-11-25",
        "rule: address.gap, unit: Seedling North, until: 2026-11-24 | '' | ''",
        "rule: address.gap | address.gap | address.gap",
      })
  void exceptionsThatAreOpenAreNamed(String entry, String first, String second) throws Exception {
    List<Map<String, String>> units =
        units(Example.SITE + "suppressions: [{" + entry + ", justification: in store}]\n");
    assertThat(units.get(0)).containsEntry("open-exceptions", first);
    assertThat(units.get(1)).containsEntry("open-exceptions", second);
  }

  /** OWASP, CSV Injection: what these begin is a formula to some spreadsheet. */
  @ParameterizedTest
  @ValueSource(
      strings = {"=1+2", "+1", "-1 m", "@sum", "\\t=1", "\\uFF1D1", "a;=1+2", "a\\t@sum", "\\r=1"})
  void nothingIsAFormula(String name) throws Exception {
    String site = Example.with("Hardening Bay", "\"" + name + "\"");
    String unit =
        Objects.requireNonNull(
            units(site.replace("stage:", "customer: \"" + name + "\"\nstage:")).get(2).get("unit"));
    for (String cell : unit.split("[;\\t\\r]", -1)) {
      assertThat(cell).doesNotMatch("(?s)[=+@\\uFF0B\\uFF0D\\uFF1D\\uFF20-].*");
    }
    assertThat(unit).contains("'");
  }

  /** RFC 4180, 2.5 to 2.7. */
  @Test
  void quotesCommasAndLinesComeBackWhole() throws Exception {
    String name = "a, \"b\"\r\nc; d";
    String site = Example.with("Hardening Bay", "\"a, \\\"b\\\"\\r\\nc; d\"");
    assertThat(units(site).get(2)).containsEntry("unit", name).containsEntry("address", "3");
  }

  @Test
  void whatCannotBeReadHasNoRowsAndTheOthersHaveTheirs() throws Exception {
    assertThat(units("format: [", Example.SITE, "format: 1\n"))
        .hasSize(3)
        .allSatisfy(row -> assertThat(row).containsEntry("site", "example"));
    assertThat(units(Example.SITE.replace("site: example\n", "")).get(0))
        .containsEntry("site", "site-0/example.yaml");
  }

  @Test
  void theTablesAreTheSameWhateverTheNumberOfThreads() throws Exception {
    assertThat(Tables.of(linter(YEARLY, 3), Sheets.inputs(Sheets.SAMPLES.resolve("faulty/sites"))))
        .isEqualTo(
            Tables.of(linter(YEARLY, 1), Sheets.inputs(Sheets.SAMPLES.resolve("faulty/sites"))));
  }
}
