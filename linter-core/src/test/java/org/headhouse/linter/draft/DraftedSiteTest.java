package org.headhouse.linter.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written of a list, and where the list leaves something open. */
class DraftedSiteTest {
  private static final String LIST =
      """
      name,cable-to-next,device-type
      Propagation,42 m,eight-way
      Boiler Loop,120 ft,heating-loop
      Hardening Bay,,sixteen-way
      """;

  @Test
  void allOfASite() {
    String text = Lists.made(Lists.linter(""), LIST, Lists.settings("elm-row", Lists.volts("5 V")));
    assertThat(text.replaceAll("(?m)^ *#.*\\n", "").replace("\n\n\n", "\n\n"))
        .isEqualTo(
            """
            format: 1
            site: elm-row
            stage: planned

            weather-station:
              at: Propagation
              readings: [light, wind-speed, rain]

            line:
              baud: 9600
              parity: even
              stop-bits: 1
              cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
              bias:
                - {at: Propagation, resistors: 560 ohm, supply: 5 V}

            defaults:
              follower:
                comm-module: built-in
                conductors: [A, B]
                outdoor: head
                on-stale-readings: close

            chain:
              - unit: Propagation
                role: head
                address: 1
                device-type: eight-way
                comm-module: fitted
                conductors: [A, B, G]
                termination: 120 ohm
                outdoor: local
                on-stale-readings: close
                cable-to-next: 42 m
              - unit: Boiler Loop
                role: follower
                address: 2
                device-type: heating-loop
                pair: crossed  # its positive terminal has another mark than the head unit's
                termination: none
                cable-to-next: 120 ft
              - unit: Hardening Bay
                role: follower
                address: 3
                device-type: sixteen-way
                termination: 120 ohm
            """);
    assertThat(Lists.results(Lists.linter(""), text)).isEmpty();
  }

  /** All the ways in which one list may be written. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "name;cable-to-next;device-type|Propagation;42 m;eight-way|Boiler Loop;120 ft;heating-loop|Hardening Bay;;sixteen-way",
        "Device Type,Name,Cable To Next|eight-way,Propagation,42m|heating-loop,Boiler Loop,120 ft|sixteen-way,Hardening Bay",
        "\uFEFF\"name\" , \"cable_to_next\",\"type\"\r||\"Propagation\",\"42 m\",eight-way||Boiler Loop , 120 ft , heating-loop|,,|Hardening Bay,0 m,sixteen-way||",
        "unit,,length (m),device|Propagation,\"by the door, left\",42,eight-way|Boiler Loop,\"\"\"new\"\"\",120 ft,heating-loop|Hardening Bay,,,sixteen-way",
      })
  void listsThatSayTheSame(String written) {
    String wanted = Lists.made(LIST);
    assertThat(Lists.made(written.replace('|', '\n'))).isEqualTo(wanted);
    assertThat(Lists.made(written.replace("|", "\r\n"))).isEqualTo(wanted);
    assertThat(Lists.made(written.replace("|", "\r"))).isEqualTo(wanted);
  }

  /** A list may say what is set in the houses under a heading that nobody expects. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "zone,name,remarks,cable | zone, remarks",
        "name,cable,a1,a2,a3,a4,a5,a6,a7,a8    | a1, a2, a3, a4, a5, a6, a7, a8",
        "name,cable,a1,a2,a3,a4,a5,a6,a7,a8,a9 | a1, a2, a3, a4, a5, a6, a7, a8, …",
      })
  void columnsThatAreNotReadAreNamed(String headings, String told) {
    String rows = headings.startsWith("zone") ? "\n1,Palms\n9,Cacti\n" : "\nPalms\nCacti\n";
    String text = Lists.made(headings + rows);
    assertThat(text.lines()).contains("# look: columns of the list that were not read: " + told);
  }

  /** What decides whether somebody is hurt is asked at each unit, and nothing is taken for it. */
  @Test
  void ventsAreAskedForAtEachUnit() {
    String text = Lists.made(LIST);
    assertThat(
            text.split(
                "\n    # look: its vents; set vents: none, roof, side or roof-and-side\n", -1))
        .hasSize(1 + 3);
    assertThat(text).doesNotContain("\n    vents:");
  }

  /** Whether an idle line has to be held, and where commons run, depends on the type. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | # look: device-types.yaml does not say of eight-way: idle-bias (needed or not-needed), isolated (true or false)",
        "', isolated: true' | # look: device-types.yaml does not say of eight-way: idle-bias (needed or not-needed)",
        "', idle-bias: needed' | # look: device-types.yaml does not say of eight-way: isolated (true or false)",
        "', idle-bias: needed, isolated: false' |",
      })
  void whatATypeDoesNotSayIsAsked(String known, String asked) throws IOException {
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(
                SiteInput.text(
                    "device-types.yaml",
                    "format: 1\ndevice-types:\n  - {id: eight-way" + known + "}\n"))
            .build();
    String text =
        Lists.made(
            linter,
            "name,cable,device-type\nPalms,,eight-way\nCacti,,eight-way\nFerns,,\n",
            Lists.settings("elm-row", null));
    assertThat(text.lines().filter(line -> line.startsWith("# look: device-types.yaml")))
        .isEqualTo(asked == null ? List.of() : List.of(asked));
    assertThat(text)
        .contains("# look: device-type of Ferns; idle-bias and isolated of that type\n");
  }

  /** The heading stays in its comment. */
  @Test
  void aHeadingOfTwoLinesIsOne() {
    assertThat(Lists.made("name,cable,\"two\nlines\"\nPalms\nCacti\n").lines())
        .contains("# look: columns of the list that were not read: \"two\\u000Alines\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "length-m    | 42   | 42 m",
        "cable (ft)  | 42   | 42 ft",
        "length [m]  | 42.5 | 42.5 m",
        "cable in ft | 42,5 | 42.5 ft",
        "length (ft) | 42 m | 42 m",
        "cable       | 7ft  | 7 ft",
        "cable       | 1,25 m | 1.25 m",
      })
  void lengths(String heading, String written, String wanted) {
    String list = "name;" + heading + "\nPropagation;" + written + "\nHardening Bay;\n";
    assertThat(Lists.made(list)).contains("\n    cable-to-next: " + wanted + "\n");
  }

  /**
   * Computed: two terminators of 120 ohm and a quarter of a unit load leave 231 mV with 620 ohm at
   * 5 V, and 197 mV with 470 ohm at 3.3 V.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''     | ''   | look: bias cannot be computed before every length of cable is known",
        "''     | 5 V  | look: bias cannot be computed before every length of cable is known",
        "42 m   | ''   | '#   - {at: Propagation, resistors: 560 ohm, supply: 5 V}'",
        "42 m   | 3.3 V | look: no bias resistors of 450 ohm or more are enough",
        "42 m   | 5 V  | '    - {at: Propagation, resistors: 560 ohm, supply: 5 V}'",
      })
  void bias(String length, String supply, String wanted) {
    String text =
        Lists.made(
            Lists.linter(""),
            "name,cable,type\nPropagation," + length + ",eight-way\nHardening Bay,,eight-way\n",
            Lists.settings("elm-row", supply.isEmpty() ? null : Lists.volts(supply)));
    assertThat(text).contains(wanted);
    assertThat(Lists.results(Lists.linter(""), text))
        .allMatch(result -> result.endsWith("[cable.length-unknown]"));
  }

  /** What is only proposed is right once the marks of a comment are taken away. */
  @Test
  void theBiasInCommentsCanBeUsed() {
    String text = Lists.made(LIST).replace("  # bias:", "  bias:").replace("  #   - {", "    - {");
    assertThat(text).contains("\n  bias:\n    - {at: Propagation, ");
    assertThat(Lists.results(Lists.linter(""), text)).isEmpty();
  }

  @Test
  void thePolicyOfTheRepositoryIsKept() {
    SiteLinter linter =
        Lists.linter(
            """
            rules:
              conductors.ground: {parameters: {landed: every-unit}}
              bias.weak: {parameters: {margin: 20 mV}}
            """);
    String text = Lists.made(linter, LIST, Lists.settings("elm-row", Lists.volts("5 V")));
    assertThat(text).doesNotContain("[A, B]").contains("resistors: 510 ohm");
    assertThat(Lists.results(linter, text)).isEmpty();
  }

  /** A line that cannot be built as it is listed gives a file all the same, and its results. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3  | 700 m | sixteen-way  | cable.too-long",
        "80 | 2 m   | screen-drive | segment.overloaded",
        "80 | 2 m   | screen-drive | address.beyond-limit",
        "3  | 2 m   | ''           | cable.length-unknown",
      })
  void listsOfWrongLines(int number, String length, String type, String rule) {
    StringBuilder list = new StringBuilder("name,cable-to-next,device-type\n");
    for (int i = 1; i <= number; i++) {
      boolean unknown = i == number || (type.isEmpty() && i == 1);
      list.append("Bay ").append(i).append(',').append(unknown ? "" : length);
      list.append(',').append(type).append('\n');
    }
    assertThat(Lists.results(Lists.linter(""), Lists.made(list.toString())))
        .anyMatch(result -> result.endsWith("[" + rule + "]"));
  }

  @ParameterizedTest
  @CsvSource({
    "Elm Row, Elm, 120 ohm, 24 AWG, 5 V, id",
    "elm--row, Elm, 120 ohm, 24 AWG, 5 V, id",
    "elm-row, ' ', 120 ohm, 24 AWG, 5 V, title",
    "elm-row, Elm, 0 ohm, 24 AWG, 5 V, impedance",
    "elm-row, Elm, 120 ohm, 0 mm2, 5 V, gauge",
    "elm-row, Elm, 120 ohm, 24 AWG, 0 mV, bias supply",
  })
  void settingsThatNoSiteCanHave(
      String id, String title, String impedance, String gauge, String supply, String told) {
    assertThatThrownBy(
            () ->
                new DraftSettings(
                    id,
                    title,
                    List.of(Reading.RAIN),
                    9600,
                    Parity.EVEN,
                    known(Quantities.gauge(gauge)),
                    true,
                    known(Quantities.resistance(impedance)),
                    known(Quantities.voltage(supply))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the " + told);
  }

  private static <T> T known(@Nullable T value) {
    if (value == null) {
      throw new AssertionError("no such quantity");
    }
    return value;
  }
}
