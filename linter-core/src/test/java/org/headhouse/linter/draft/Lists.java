package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/** Lists of units in tests: drafts of them, beside the device types of the sample sites. */
final class Lists {
  private static final Path TYPES = Path.of("../sample-sites/device-types.yaml");

  /** Without a policy; random cases need it thousands of times. */
  static final SiteLinter USUAL = linter("");

  private Lists() {}

  static SiteLinter linter(String policy) {
    try {
      return SiteLinter.builder()
          .deviceTypes(TYPES)
          .policy(SiteInput.text("linter.yaml", "format: 1\nrule-set: 1\n" + policy))
          .build();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Settings as people have them who write none; with or without a supply for bias. */
  static DraftSettings settings(String id, @Nullable Voltage biasSupply) {
    return new DraftSettings(
        id,
        null,
        List.of(Reading.LIGHT, Reading.WIND_SPEED, Reading.RAIN),
        9600,
        Parity.EVEN,
        present(Quantities.gauge("24 AWG")),
        true,
        present(Quantities.resistance("120 ohm")),
        biasSupply);
  }

  static Voltage volts(String written) {
    return present(Quantities.voltage(written));
  }

  private static <T> T present(@Nullable T value) {
    if (value == null) {
      throw new AssertionError("no such quantity");
    }
    return value;
  }

  static Draft draft(byte[] list) {
    return draft(USUAL, list, settings("elm-row", null));
  }

  static Draft draft(SiteLinter linter, byte[] list, DraftSettings settings) {
    try {
      return linter.draft(new SiteInput("units.csv", most -> list), settings);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The text that is made of a list without faults. */
  static String made(String list) {
    return made(USUAL, list, settings("elm-row", null));
  }

  static String made(SiteLinter linter, String list, DraftSettings settings) {
    Draft draft = draft(linter, list.getBytes(UTF_8), settings);
    if (draft instanceof Draft.Made made) {
      return made.text();
    }
    throw new AssertionError(faults((Draft.Refused) draft));
  }

  /** The faults of a list, each in one line. */
  static List<String> faults(String list) {
    Draft draft = draft(list.getBytes(UTF_8));
    if (draft instanceof Draft.Refused refused) {
      return faults(refused);
    }
    throw new AssertionError(((Draft.Made) draft).text());
  }

  static List<String> faults(Draft.Refused refused) {
    return refused.faults().stream()
        .map(fault -> TextReport.inOneLine(fault.location(), fault.message()))
        .toList();
  }

  /** What a check tells of a text, down to notes, but for what the draft itself left open. */
  static List<String> results(SiteLinter linter, String text) {
    CheckReport report = linter.checkText("elm-row.yaml", text);
    if (!report.notifications().isEmpty()) {
      throw new AssertionError(report.notifications());
    }
    return report.at(Level.NOTE).stream()
        .filter(result -> !result.rule().equals("draft.open-point"))
        .map(TextReport::inOneLine)
        .toList();
  }
}
