package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteText;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The table of measurements; its ranges are those of {@code commissioning.measured-off}. */
class MeasurementsTest {
  private static List<String> rows(Object site) {
    Document page = Sheets.page(site.toString());
    return page.select("[aria-label^=Measurements] tbody tr").eachText();
  }

  /** Whoever reads a table alone reads in which state of the supplies it is filled in. */
  @Test
  void eachTableSaysInWhichStateItIsMeasured() {
    assertThat(Sheets.page(Example.SITE).select("[aria-label^=Measurements] caption").eachText())
        .containsExactly("Power off, supplies isolated and locked off", "Power on, nobody sends");
  }

  private static String resistanceAt(String where) {
    return "Power off: resistance between D1 and D0 " + where;
  }

  private static String voltageAt(String where) {
    return "Power on: voltage of D1 against D0, red lead on D1 " + where;
  }

  /**
   * Two terminators of 120 ohm are 60 ohm on a short line (computed); with bias of 560 ohm each
   * returned through the supply 56.95 ohm, and idle 0.2542 V at 5 V (computed: RDG's formula). With
   * 5 % of each part, 1 % and 0.8 ohm or 3 mV: 52.8 to 64.5 ohm, 215 to 299 mV.
   */
  @Test
  void theRangesAreThoseOfTheTextbook() {
    assertThat(
            rows(
                new SiteText()
                    .bias("Head House", "560 ohm", "5 V")
                    .unit("120 ohm", "1 m", "device-type: eight-way")
                    .unit("120 ohm", "", "device-type: eight-way")))
        .containsExactly(
            resistanceAt("Head House 57.0 ohm to 60.0 ohm 52.8 to 64.4 ohm"),
            resistanceAt("Bay 2 57.0 ohm to 60.0 ohm 52.8 to 64.4 ohm"),
            voltageAt("Head House 254 mV 215 to 299 mV"),
            voltageAt("Bay 2 254 mV 215 to 299 mV"));
  }

  /** The head unit, the far end of every segment, the side out of every repeater. */
  @Test
  void whereEverySegmentIsMeasured() {
    List<String> rows =
        rows(
            new SiteText()
                .bias("Boiler", "560 ohm", "5 V")
                .unit("120 ohm", "9 m")
                .unit("none", "9 m")
                .repeater("Boiler", "120 ohm", "9 m")
                .unit("120 ohm", ""));
    assertThat(rows)
        .hasSize(8)
        .satisfies(
            all -> {
              assertThat(all.get(0)).startsWith(resistanceAt("Head House"));
              assertThat(all.get(1)).startsWith(resistanceAt("Boiler, side in"));
              assertThat(all.get(2)).startsWith(resistanceAt("Boiler, side out"));
              assertThat(all.get(3)).startsWith(resistanceAt("Bay 3"));
              assertThat(all.get(4))
                  .isEqualTo(
                      voltageAt(
                          "Head House not defined: no bias Not judged. If it reads over 50 mV"
                              + " either way, a bias is fitted that the file does not have."));
              assertThat(all.get(5)).startsWith(voltageAt("Boiler, side in not defined: no bias"));
              assertThat(all.get(6)).startsWith(voltageAt("Boiler, side out 2"));
              assertThat(all.get(7)).startsWith(voltageAt("Bay 3 2"));
            });
  }

  private static String capacitors(String text) {
    return text.replace("120 ohm\n", "120 ohm + 1 nF\n");
  }

  @Test
  void aPairThatIsOpenForDirectCurrentIsNotJudged() {
    String site =
        capacitors(
            new SiteText()
                .bias("Head House", "560 ohm", "5 V")
                .unit("120 ohm", "900 m")
                .unit("120 ohm", "")
                .toString());
    assertThat(rows(site))
        .hasSize(4)
        .startsWith(
            resistanceAt("Head House not judged: no terminator passes direct current"),
            resistanceAt("Bay 2 not judged: no terminator passes direct current"));
  }

  /**
   * Of 600 m of 24 AWG, 101 ohm out and back, each end hides a third terminator at the other, and
   * shows one at itself; none is hidden from both (computed).
   */
  @Test
  void theOtherEndShowsWhatThisOneHides() {
    assertThat(rows(new SiteText().unit("120 ohm", "600 m").unit("120 ohm", "")))
        .hasSize(4)
        .satisfies(
            all -> {
              assertThat(all.get(0))
                  .endsWith(
                      "Cannot show a third terminator at Bay 2. Measure at the other end as well.");
              assertThat(all.get(1))
                  .endsWith(
                      "Cannot show a third terminator at Head House. Measure at the other end as"
                          + " well.");
            });
  }

  /**
   * In the middle of 1000 m with eleven loads, neither end shows it; with the terminators off it
   * cannot hide.
   */
  @Test
  void terminatorsAreTakenOffWhereNeitherEndShowsAll() {
    List<String> rows =
        rows(
            new SiteText()
                .bias("Head House", "510 ohm", "5 V")
                .unit("120 ohm", "100 m")
                .units(9, "100 m")
                .unit("120 ohm", ""));
    String advice =
        "Measure at both ends, and with the terminators off, the far end open and shorted.";
    assertThat(rows)
        .hasSize(6)
        .satisfies(
            all -> {
              assertThat(all.get(0))
                  .endsWith("Cannot show a third terminator at Bay 5 or beyond. " + advice);
              assertThat(all.get(1))
                  .endsWith("Cannot show a third terminator at Bay 5 or before it. " + advice);
              assertThat(all.get(2))
                  .contains("both terminators off Head House", "at least")
                  .doesNotContain("Cannot");
              assertThat(all.get(3))
                  .contains("both terminators off, the pair shorted at Bay 11 Head House")
                  .contains("168.4 ohm")
                  .endsWith("Afterwards remove the short and put the terminators back.");
            });
  }

  @Test
  void aLineInDisorderHasNoRanges() {
    assertThat(rows(Example.SITE.replace("termination: none", "termination: 120 ohm")))
        .hasSize(4)
        .allMatch(row -> row.endsWith("not computed: fix the results of this segment first"));
  }

  /** What a receiver needs is known all the same: 205.05 mV with the error of the meter. */
  @Test
  void aLineOfUnknownLengthHasALeastVoltage() {
    assertThat(rows(Example.SITE.replace("    cable-to-next: 60 m\n", "")))
        .satisfies(
            all -> {
              assertThat(all.get(0))
                  .isEqualTo(
                      resistanceAt("Propagation not computed: a value is missing in the file"));
              assertThat(all.get(2))
                  .endsWith("not computed: a value is missing in the file at least 206 mV");
            });
  }
}
