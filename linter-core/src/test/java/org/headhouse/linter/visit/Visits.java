package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.report.TextReport;

/** A site with a repeater, and lists from visits to it. */
public final class Visits {
  public static final String SITE =
      """
      # Drawn up with the grower.
      format: 1
      site: elm-row
      stage: planned
      weather-station: {at: Propagation, readings: [light, rain]}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        bias: [{at: Propagation, resistors: 560 ohm, supply: 5 V}]
      defaults:
        follower:
          comm-module: fitted
          conductors: [A, B]
          outdoor: head
          on-stale-readings: close
          vents: roof
      chain:
        - unit: Propagation
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: local
          vents: none
          cable-to-next: 40 m
        - unit: Seedling North
          role: follower
          address: 2
          termination: none
          close-time: 90 s
          cable-to-next: 60 m
        - repeater: East Boiler Room
          conductors: [A, B]
          termination: {in: 120 ohm, out: 120 ohm}
          idle-bias: built-in
          isolated: true
          unit-load: 1
          cable-to-next: 30 m
        - unit: Hardening Bay
          role: follower
          address: 3
          termination: 120 ohm
      """;

  static final String HEADINGS = "what,where,acceptable,found,by,date,remark\n";
  static final String OF_SITE = "site,elm-row,,,,,\n";

  private static final SiteLinter LINTER = linter();

  private Visits() {}

  private static SiteLinter linter() {
    try {
      return SiteLinter.builder().build();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** A list of some rows. */
  static String list(String... rows) {
    return HEADINGS + OF_SITE + String.join("\n", rows) + "\n";
  }

  static SiteUpdate update(byte[] list, byte[] site) {
    try {
      return LINTER.visit(
          new SiteInput("visit.csv", most -> list), new SiteInput("elm-row.yaml", most -> site));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static SiteUpdate.Made made(byte[] list, byte[] site) {
    SiteUpdate update = update(list, site);
    assertThat(update)
        .as(
            "%s\n%s",
            update instanceof SiteUpdate.Refused refused ? faults(refused) : "",
            new String(list, UTF_8))
        .isInstanceOf(SiteUpdate.Made.class);
    return (SiteUpdate.Made) update;
  }

  /** A site with the rows of a list. */
  static String after(String site, String... rows) {
    return new String(made(list(rows).getBytes(UTF_8), site.getBytes(UTF_8)).after(), UTF_8);
  }

  /** What a site gains by the rows of a list; nothing of it may be lost. */
  static String added(String site, String... rows) {
    return Added.of(site, after(site, rows));
  }

  static List<String> remarks(String site, String... rows) {
    return made(list(rows).getBytes(UTF_8), site.getBytes(UTF_8)).remarks().stream()
        .map(one -> one.level().word() + ": " + one.text())
        .toList();
  }

  /** The faults of a list that is refused. */
  static List<String> faults(String list, String site) {
    SiteUpdate update = update(list.getBytes(UTF_8), site.getBytes(UTF_8));
    assertThat(update).as(list).isInstanceOf(SiteUpdate.Refused.class);
    return faults((SiteUpdate.Refused) update);
  }

  private static List<String> faults(SiteUpdate.Refused refused) {
    return refused.faults().stream()
        .map(fault -> TextReport.inOneLine(fault.location(), fault.message()))
        .toList();
  }
}
