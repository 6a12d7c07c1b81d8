package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the linter says does not depend on the language, the digits and the time zone of a machine.
 */
class MachineSettingsTest {
  private static final Path SITES = Path.of("..", "sample-sites", "sites");
  private static final Path FAULTY = Path.of("..", "sample-sites", "faulty");

  private final Locale usual = Locale.getDefault();
  private final TimeZone usualZone = TimeZone.getDefault();

  @AfterEach
  void usualSettings() {
    Locale.setDefault(usual);
    TimeZone.setDefault(usualZone);
  }

  /** In Turkish a small I has no dot; Arabic and Bengali have digits of their own. */
  @ParameterizedTest
  @CsvSource({
    "tr-TR, Europe/Istanbul",
    "ar-EG-u-nu-arab, Pacific/Kiritimati",
    "bn-BD-u-nu-beng, Pacific/Marquesas",
    "de-CH, America/St_Johns"
  })
  void everyOutputIsTheSame(String language, String zone) throws Exception {
    Locale.setDefault(Locale.ENGLISH);
    TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
    String expected = everything();
    Locale.setDefault(Locale.forLanguageTag(language));
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    assertThat(everything()).isEqualTo(expected);
  }

  private static String everything() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SiteLinter faulty = linter(FAULTY);
    CheckReport report = faulty.checkFiles(files(FAULTY.resolve("sites")));
    assertThat(report.results()).hasSizeGreaterThan(60);
    for (var result : report.results()) {
      out.write(String.join("\n", TextReport.lines(result)).getBytes(UTF_8));
    }
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    new JUnitReport(Level.ERROR).write(report.results(), report.notifications(), out);
    faulty.fix(
        files(FAULTY.resolve("sites")).stream().map(SiteInput::file),
        FixKind.PROPOSED,
        fixed -> out.writeBytes(fixed.after()));
    SiteLinter sound = linter(SITES.resolveSibling("."));
    try (FiguresReport figures = new FiguresReport(out)) {
      sound.figures(files(SITES).stream().map(SiteInput::file), figures::add);
    }
    sound.sheets(
        files(SITES).stream().map(SiteInput::file),
        Measure.METRIC,
        Paper.A4,
        sheet -> out.writeBytes(sheet.html()));
    return out.toString(UTF_8);
  }

  private static SiteLinter linter(Path home) throws IOException {
    return SiteLinter.builder()
        .clock(Clock.fixed(Instant.parse("2026-11-26T12:00:00Z"), ZoneOffset.UTC))
        .policy(home.resolve("linter.yaml"))
        .deviceTypes(home.resolve("device-types.yaml"))
        .withoutBaseline()
        .build();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
