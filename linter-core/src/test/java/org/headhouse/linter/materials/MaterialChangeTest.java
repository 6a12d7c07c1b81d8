package org.headhouse.linter.materials;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.report.sheet.Sheets;
import org.headhouse.linter.repository.SiteState;
import org.junit.jupiter.api.Test;

/** A change needs what was not there before, and no more. */
class MaterialChangeTest {

  private static List<SiteChange> changes(String before, String after) throws Exception {
    SiteInput types = SiteInput.file(Sheets.SAMPLE_TYPES);
    return Sheets.linter(1)
        .changes(
            SiteState.of(Stream.of(SiteInput.text("one.yaml", before)), types),
            SiteState.of(Stream.of(SiteInput.text("one.yaml", after)), types));
  }

  private static MaterialChange change(String before, String after) throws Exception {
    return ((SiteChange.Changed) changes(before, after).get(0)).materials();
  }

  private static List<String> words(BillOfMaterials bill) {
    List<String> words = new ArrayList<>();
    for (MaterialCount count : bill.counts()) {
      words.add(
          (count.amountIn(bill.measure()) + " " + count.material().word() + " " + count.type())
              .strip());
      count.notCounted().forEach(place -> words.add("? " + place));
    }
    return words;
  }

  /** The house that the page on changes puts in: two new runs for an old one, and one unit. */
  @Test
  void aHouseIsPutIn() throws Exception {
    Path changed = Sheets.SAMPLES.resolve("changed");
    String before = Files.readString(changed.resolve("before/hazelgate.yaml"));
    String after = Files.readString(changed.resolve("after/hazelgate.yaml"));
    MaterialChange change = change(before, after);
    // 22 m to Young Plants, and 30 m on to Tomatoes South, in place of the 48 m between them.
    assertThat(words(change.needed()))
        .containsExactly(
            (22.0 + 30.0) + " cable 24 AWG, shielded, 120 ohm, pair",
            "1.0 comm-module for eight-way");
    assertThat(words(change.removed()))
        .containsExactly("48.0 cable 24 AWG, shielded, 120 ohm, pair");
    // 52 m and a tenth of it are 57.2 m.
    assertThat(ChangeReport.markdown("then", changes(before, after)))
        .contains(
            "### Materials\n\n- Needed: 52 m of cable, 24 AWG, shielded, 120 ohm, pair; with 10 %"
                + " of slack 58 m.\n- Needed: 1 communication module, for eight-way.\n- Comes off:"
                + " 48 m of cable");
  }

  /** The module of the old device may be what failed: the new one gets its own. */
  @Test
  void aControllerIsExchangedForOneOfTheSameType() throws Exception {
    String before =
        Example.with("unit: Seedling North", "unit: Seedling North\n    serial-number: S-1");
    MaterialChange change = change(before, before.replace("S-1", "S-2"));
    assertThat(words(change.needed())).containsExactly("1.0 comm-module");
    assertThat(words(change.removed())).containsExactly("1.0 comm-module");
  }

  private static final String FURTHER =
      """
          cable-to-next: 25 m
        - unit: Far House
          role: follower
          address: 4
          comm-module: fitted
          conductors: [A, B]
          termination: 120 ohm
          outdoor: {light: head, temperature: head}
      """;

  /** The terminator that comes off is not counted for the new end. */
  @Test
  void aHouseIsAddedAtTheEnd() throws Exception {
    int last = Example.SITE.lastIndexOf("termination: 120 ohm");
    String after =
        Example.SITE.substring(0, last)
            + Example.SITE.substring(last).replace("termination: 120 ohm", "termination: none")
            + FURTHER;
    MaterialChange change = change(Example.SITE, after);
    assertThat(words(change.needed()))
        .containsExactly(
            "25.0 cable 24 AWG, shielded, 120 ohm, pair",
            "1.0 terminator 120 ohm",
            "1.0 comm-module");
    assertThat(words(change.removed())).containsExactly("1.0 terminator 120 ohm");
  }

  @Test
  void anAddressANameOrAnEqualLengthNeedsNothing() throws Exception {
    String after =
        Example.SITE
            .replace("unit: Seedling North", "unit: Seedling Hall")
            .replace("address: 3", "address: 7")
            .replace("cable-to-next: 60 m", "cable-to-next: 196.850394 ft");
    assertThat(change(Example.SITE, after).isEmpty()).isTrue();
    assertThat(ChangeReport.markdown("then", changes(Example.SITE, after)))
        .doesNotContain("Materials");
  }

  @Test
  void aLengthOfWhichTheEarlierIsNotKnownIsNamed() throws Exception {
    String before = Example.with("    cable-to-next: 60 m\n", "");
    assertThat(words(change(before, Example.SITE).needed()))
        .containsExactly(
            "null cable 24 AWG, shielded, 120 ohm, pair",
            "? cable from \"Seedling North\" to \"Hardening Bay\": the two files do not say whether"
                + " it is new");
    assertThat(words(change(Example.SITE, before).needed()))
        .containsExactly(
            "null cable 24 AWG, shielded, 120 ohm, pair",
            "? cable from \"Seedling North\" to \"Hardening Bay\"");
  }

  @Test
  void anotherCableIsAskedFor() throws Exception {
    String after = Example.with("gauge: 24 AWG", "gauge: 22 AWG");
    assertThat(words(change(Example.SITE, after).needed()))
        .containsExactly(
            "null cable 22 AWG, shielded, 120 ohm, pair",
            "? the cable is written differently: where it is really another, 100 m more");
  }

  @Test
  void protectionBiasAndModulesThatAreFitted() throws Exception {
    String before =
        Example.with(
            "address: 2\n    comm-module: fitted", "address: 2\n    comm-module: built-in");
    String after =
        Example.with(
                "cable-to-next: 60 m",
                "cable-to-next: 60 m\n    run-to-next: between-buildings\n    surge-protection-to-next: fitted")
            .replace("resistors: 510 ohm", "resistors: 560 ohm");
    MaterialChange change = change(before, after);
    assertThat(words(change.needed()))
        .containsExactly("2.0 bias-resistor 560 ohm", "1.0 comm-module", "2.0 surge-protector");
    assertThat(words(change.removed())).containsExactly("2.0 bias-resistor 510 ohm");
  }

  /** What the file says is not there has to be brought; what it does not say may be there. */
  @Test
  void whatWasAbsentIsNeeded() throws Exception {
    String fitted = "address: 2\n    comm-module: fitted";
    String between = "cable-to-next: 60 m\n    run-to-next: between-buildings";
    String before =
        Example.with(fitted, "address: 2\n    comm-module: absent")
            .replace("cable-to-next: 60 m", between);
    String after =
        Example.with("cable-to-next: 60 m", between + "\n    surge-protection-to-next: fitted");
    assertThat(words(change(before, after).needed()))
        .containsExactly("1.0 comm-module", "2.0 surge-protector");
    assertThat(words(change(before, before + "# again\n").needed())).isEmpty();
    String unknown = Example.with(fitted, "address: 2");
    assertThat(words(change(unknown, Example.SITE).needed()))
        .containsExactly(
            "null comm-module",
            "? communication module at \"Seedling North\": the two files do not say whether it is"
                + " new");
  }

  /** What the later file says is not there comes off, and is named as missing. */
  @Test
  void whatIsAbsentLaterComesOff() throws Exception {
    String between = "cable-to-next: 60 m\n    run-to-next: between-buildings";
    String bare = Example.with("cable-to-next: 60 m", between);
    String fitted =
        Example.with("cable-to-next: 60 m", between + "\n    surge-protection-to-next: fitted");
    MaterialChange change = change(fitted, bare);
    assertThat(words(change.removed())).containsExactly("2.0 surge-protector");
    assertThat(words(change.needed())).hasSize(2).contains("null surge-protector");
  }

  @Test
  void aNewSiteNeedsAllOfIt() throws Exception {
    SiteInput types = SiteInput.file(Sheets.SAMPLE_TYPES);
    SiteState none = SiteState.of(Stream.of(), types);
    SiteState one = SiteState.of(Stream.of(SiteInput.text("one.yaml", Example.SITE)), types);
    SiteChange.Added added = (SiteChange.Added) Sheets.linter(1).changes(none, one).get(0);
    assertThat(words(added.materials()))
        .containsExactly(
            "100.0 cable 24 AWG, shielded, 120 ohm, pair",
            "2.0 terminator 120 ohm",
            "2.0 bias-resistor 510 ohm",
            "3.0 comm-module");
  }
}
