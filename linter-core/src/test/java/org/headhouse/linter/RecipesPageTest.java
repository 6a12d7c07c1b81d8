package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.report.InventoryReport;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Resistance;
import org.junit.jupiter.api.Test;

/** The recipes do what the page shows. */
class RecipesPageTest {
  private static final Path PAGE = Path.of("docs", "recipes.md");
  private static final Path SAMPLES = Path.of("../sample-sites");
  private static final Path TYPES = SAMPLES.resolve("changed/device-types.yaml");

  /** A day a year and more after the line of the sample was proved. */
  private static final Clock LATER =
      Clock.fixed(
          LocalDate.of(2026, 10, 3).atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC);

  /** A block of the page, without the indentation of the step that it belongs to. */
  private static String block(String mark) throws IOException {
    Matcher matcher =
        Pattern.compile("( *)<!-- " + mark + " -->\n *```[a-z]+\n(.*?) *```", Pattern.DOTALL)
            .matcher(Files.readString(PAGE));
    assertThat(matcher.find()).as("the block %s", mark).isTrue();
    return matcher.group(2).replaceAll("(?m)^" + matcher.group(1), "");
  }

  private static List<String> lines(String mark) throws IOException {
    return block("output: " + mark).lines().toList();
  }

  private static List<String> headlines(List<Result> results) {
    return results.stream().map(TextReport::inOneLine).toList();
  }

  @Test
  void aLineIsTakenOverAsItIs() throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    DraftSettings settings =
        new DraftSettings(
            "units",
            null,
            List.of(Reading.LIGHT, Reading.TEMPERATURE, Reading.WIND_SPEED, Reading.RAIN),
            9600,
            Parity.EVEN,
            new Gauge.Awg(24, "24 AWG"),
            true,
            new Resistance(120, "120 ohm"),
            null);
    Draft draft = linter.draft(SiteInput.text("units.csv", block("example: list")), settings);
    assertThat(draft).isInstanceOf(Draft.Made.class);
    String text = ((Draft.Made) draft).text();
    assertThat(text).contains("    address: 4\n", "# look: ");
    assertThat(headlines(linter.checkText("sites/units.yaml", text).at(Level.ERROR)))
        .containsExactlyElementsOf(lines("draft"));
  }

  private static SiteState state(String folder) throws IOException {
    String file = folder + "/hazelgate.yaml";
    return SiteState.of(
        Stream.of(SiteInput.file(SAMPLES.resolve(file), file)), SiteInput.file(TYPES));
  }

  private static List<String> changes(String folder) throws IOException {
    return ChangeReport.text(
        "changed/before", Checks.linter().changes(state("changed/before"), state(folder)));
  }

  @Test
  void anExchangeIsPlanned() throws IOException {
    assertThat(changes("changed/exchanged").stream().map(String::strip))
        .containsSubsequence(lines("exchange").toArray(String[]::new));
  }

  @Test
  void bothWaysOfGivingAddressesAreCompared() throws IOException {
    assertThat(changes("changed/edited").stream().map(String::strip))
        .containsSubsequence(lines("addressing").toArray(String[]::new));
  }

  @Test
  void aLineThatIsDueIsReportedUntilItIsProvedAgain() throws IOException {
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(TYPES)
            .policy(SiteInput.text("linter.yaml", block("example: policy")))
            .clock(LATER)
            .build();
    String site = Files.readString(SAMPLES.resolve("changed/before/hazelgate.yaml"));
    assertThat(headlines(linter.checkText("sites/hazelgate.yaml", site).results()))
        .containsExactlyElementsOf(lines("due"));
    String proved = site.stripTrailing() + "\n" + block("example: renewed");
    assertThat(linter.checkText("sites/hazelgate.yaml", proved).results()).isEmpty();
  }

  /** As awk cuts the lines. */
  @Test
  void unitsWithAFirmwareAreFound() throws IOException {
    ByteArrayOutputStream table = new ByteArrayOutputStream();
    InventoryReport inventory = new InventoryReport(table);
    try (Stream<Path> files = Files.walk(SAMPLES.resolve("sites"))) {
      SiteLinter.builder()
          .deviceTypes(SAMPLES.resolve("device-types.yaml"))
          .build()
          .sheets(
              files.filter(file -> file.toString().endsWith(".yaml")).sorted().map(SiteInput::file),
              Measure.METRIC,
              Paper.A4,
              sheet -> inventory.add(sheet.inventory()));
    }
    List<String> found = new ArrayList<>();
    for (String row : table.toString(UTF_8).split("\r\n", -1)) {
      String[] fields = row.split(",", -1);
      if (fields.length > 6 && fields[6].equals("3.2")) {
        found.add(fields[1] + ": " + fields[2]);
      }
    }
    assertThat(found).containsExactlyElementsOf(lines("firmware"));
  }
}
