package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SheetRequest;
import org.headhouse.linter.report.SiteHistory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** Sites whose lines are proved, and their papers. */
final class Papers {
  /** That a line is proved again each year. */
  static final String YEARLY =
      "format: 1\nrule-set: 1\nrules: {commissioning.retest-due: {parameters: {every: 12"
          + " months}}}\n";

  /** A line of which all is proved: the head unit moves vents, and so do two followers of three. */
  static final String PROVED = line(4);

  private Papers() {}

  /** A line of several units of which all is proved. */
  static String line(int units) {
    StringBuilder chain = new StringBuilder();
    StringBuilder storms = new StringBuilder();
    StringBuilder followers = new StringBuilder();
    for (int i = 1; i <= units; i++) {
      boolean head = i == 1;
      boolean end = head || i == units;
      String name = head ? "Head House" : "House " + i;
      chain
          .append("  - unit: " + name + "\n    role: " + (head ? "head" : "follower"))
          .append("\n    address: " + i + "\n    device-type: eight-way-isolated")
          .append("\n    comm-module: fitted\n    conductors: [A, B, C" + (head ? ", G]" : "]"))
          .append("\n    termination: " + (end ? "120 ohm" : "none"))
          .append("\n    outdoor: " + (head ? "local" : "head"))
          .append("\n    vents: roof\n    on-stale-readings: close\n    stale-after: 40 s")
          .append("\n    close-time: 85 s" + (i < units ? "\n    cable-to-next: 8 m\n" : "\n"));
      storms.append(head ? "" : ", ");
      storms.append("{unit: " + name + ", limit: 12 m/s, closed-in: " + (60 + i % 25) + " s}");
      followers.append(head ? "" : (i == 2 ? "" : ", ") + name);
    }
    return """
        format: 1
        site: proved
        title: Proved Nursery
        customer: proved-nurseries
        stage: commissioned
        weather-station: {at: Head House, readings: [temperature, wind-speed, rain], maximum-age: 60 s, averaging: 10 s, close-within: 3 min}
        line:
          baud: 9600
          parity: even
          stop-bits: 1
          cable: {gauge: 20 AWG, shielded: true, impedance: 120 ohm}
          bias:
            - {at: Head House, resistors: 510 ohm, supply: 5 V}
          traffic: {broadcast: {registers: 12, every: 5 s}}
        chain:
        """
        + chain
        + """
        commissioning:
          date: 2026-03-14
          by: Robin Oakfield
          meter: {type: true-RMS hand meter, serial-number: M-118, calibrated-until: 2027-01-31}
          measured:
            pair-resistance: 62 ohm
            idle-voltage: 0.31 V
            elsewhere:
              - {at: House %d, pair-resistance: 62 ohm, idle-voltage: 0.29 V}
          outdoor-readings-seen: [%s]
          storm-response-seen: [%s]
          stale-response-seen: [Head House, %s]
        """
            .formatted(units, followers, storms, followers);
  }

  static Sheets of(String policy, String... sites) {
    return of(policy, Paper.A4, sites);
  }

  static Sheets of(String policy, Paper paper, String... sites) {
    List<SiteInput> inputs =
        Stream.of(sites).map(site -> SiteInput.text("sites/proved.yaml", site)).toList();
    return Sheets.of(linter(policy), inputs.stream(), Measure.METRIC, paper);
  }

  static SiteLinter linter(String policy) {
    try {
      return SiteLinter.builder()
          .deviceTypes(Sheets.SAMPLE_TYPES)
          .policy(SiteInput.text("linter.yaml", policy))
          .clock(Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC))
          .build();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The first page of the bundle of a customer. */
  static String start(Paper paper, String... sites) {
    SheetReport report =
        linter(YEARLY)
            .sheets(
                Stream.of(sites).map(site -> SiteInput.text("sites/proved.yaml", site)),
                new SheetRequest(Measure.METRIC, paper, Slack.USUAL, SiteHistory.NONE, true),
                sheet -> {});
    return report.bundles().get(0).further().stream()
        .filter(file -> file.name().equals(SheetReport.PAGE))
        .map(file -> new String(file.content(), UTF_8))
        .findFirst()
        .orElseThrow();
  }

  /** One of the papers of the first site. */
  static Document paper(String end, String policy, String site) {
    return Jsoup.parse(of(policy, site).file("proved" + end + ".html"));
  }

  static Document certificate(String site) {
    return paper("-certificate", YEARLY, site);
  }
}
