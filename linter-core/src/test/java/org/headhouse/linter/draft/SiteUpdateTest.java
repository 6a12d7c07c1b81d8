package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A new list over a site that is there: what it says is changed, and all else stays. */
class SiteUpdateTest {
  private static final String SITE =
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
          vents: roof
      chain:
        # by the road
        - unit: Propagation
          role: head
          address: 1   # set by the maker
          firmware: '3.1'
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: local
          cable-to-next: 40 m
          # behind the boiler
        - unit: Seedling North
          role: follower
          address: 2
          termination: none
          cable-to-next: 120 ft

        # the new range
        - {unit: Mist House, role: follower, address: 3, termination: none, cable-to-next: 30 m}
        - unit: Hardening Bay
          role: follower
          address: 4
          termination: 120 ohm
      supervision:
        link: through-head
        zones: [Propagation, Seedling North, Mist House, Hardening Bay]
      """;

  private static final String LIST =
      """
      name,address,cable
      Propagation,1,40 m
      Seedling North,2,120 ft
      Mist House,3,30 m
      Hardening Bay,4,
      """;

  static SiteUpdate update(String list, String site) {
    try {
      return Lists.USUAL.update(
          SiteInput.text("units.csv", list), SiteInput.text("elm-row.yaml", site));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static SiteUpdate.Made made(String list, String site) {
    SiteUpdate update = update(list, site);
    if (update instanceof SiteUpdate.Made made) {
      return made;
    }
    throw new AssertionError(faults((SiteUpdate.Refused) update));
  }

  private static List<String> faults(SiteUpdate.Refused refused) {
    return refused.faults().stream()
        .map(fault -> TextReport.inOneLine(fault.location(), fault.message()))
        .toList();
  }

  static String after(String list, String site) {
    return new String(made(list, site).after(), UTF_8);
  }

  private static List<String> remarks(String list, String site) {
    return made(list, site).remarks().stream()
        .map(remark -> remark.level().word() + ": " + remark.text())
        .toList();
  }

  /** 120 ft are 36.576 m, whatever a list calls them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "name,address,cable\nPropagation,1,40 m\nSeedling North,2,120 ft\nMist House,3,30 m\nHardening Bay,4,\n",
        "name,cable\nPropagation,40 m\nSeedling North,36.576 m\nMist House,\nHardening Bay,\n",
        "name\nPropagation\nSeedling North\nMist House\nHardening Bay\n",
        "name;vents;conductors;firmware\nPropagation;;G, A, B;3.1\nSeedling North;roof;A B;\nMist House;;;\nHardening Bay;;B/A;\n",
      })
  void aListThatSaysTheSameChangesNothing(String list) {
    assertThat(after(list, SITE)).isEqualTo(SITE);
    assertThat(remarks(list, SITE)).isEmpty();
  }

  /** Each value in the style of its place; a default is left to the others. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "cable      | Propagation,45.5 m    | cable-to-next: 40 m                 | cable-to-next: 45.5 m",
        "address    | Propagation,7         | address: 1   # set                  | address: 7   # set",
        "firmware   | Propagation,3.2       | firmware: '3.1'                     | firmware: '3.2'",
        "conductors | Propagation,A B       | conductors: [A, B, G]               | conductors: [A, B]",
        "cable      | Mist House,9 m        | cable-to-next: 30 m}                | cable-to-next: 9 m}",
        "vents      | Mist House,side       | termination: none, cable-to-next: 30 m} | termination: none, vents: side, cable-to-next: 30 m}",
        "vents      | Seedling North,none   | termination: none~    cable-to-next: 120 ft | termination: none~    vents: none~    cable-to-next: 120 ft",
        "stub       | Seedling North,0.5 m  | termination: none~    cable-to-next: 120 ft | termination: none~    stub: 0.5 m~    cable-to-next: 120 ft",
        "serial     | Hardening Bay,0042    | address: 4~                         | address: 4~    serial-number: \"0042\"~",
      })
  void valuesAreChangedWhereTheyAreWritten(
      String heading, String row, String before, String after) {
    String name = row.split(",", -1)[0];
    String list =
        "name;"
            + heading
            + "\n"
            + LIST.lines()
                .skip(1)
                .map(line -> line.split(",", -1)[0])
                .map(one -> one.equals(name) ? row.replace(',', ';') : one)
                .reduce("", (all, one) -> all + one + "\n");
    String old = before.strip().replace("~", "\n");
    assertThat(SITE).containsOnlyOnce(old);
    assertThat(after(list, SITE)).isEqualTo(SITE.replace(old, after.strip().replace("~", "\n")));
  }

  /** The line's own references follow. */
  @Test
  void aUnitThatIsRenamedKeepsAllItHas() {
    String list = LIST.replace("Mist House", "NO").replace("Propagation", "Old Shed");
    assertThat(after(list, SITE))
        .isEqualTo(SITE.replace("Mist House", "\"NO\"").replace("Propagation", "Old Shed"));
    assertThat(remarks(list, SITE))
        .containsExactly(
            "note: \"Propagation\" is \"Old Shed\" in the list",
            "note: \"Mist House\" is \"NO\" in the list");
  }

  /** Where a list has nothing but names, what is alone between the same neighbours is the same. */
  @Test
  void aListOfNamesRenamesByPlace() {
    assertThat(after("name\nPropagation\nSeedling South\nMist House\nHardening Bay\n", SITE))
        .isEqualTo(SITE.replace("Seedling North", "Seedling South"));
  }

  @Test
  void itemsJoinLeaveAndMoveAsWholeLines() {
    String list =
        """
        name,role,address,cable
        Propagation,head,1,40 m
        Mist House,,3,
        Seedling North,,2,22 m
        Meter,equipment,57,8 m
        Fernery,,,
        """;
    assertThat(after(list, SITE))
        .isEqualTo(
            SITE.replaceAll("(?s)  - unit: Seedling North.*(?=supervision:)", "")
                .replace(
                    "supervision:",
                    """
                      # the new range
                      - {unit: Mist House, role: follower, address: 3, termination: none, cable-to-next: 30 m}
                        # look: cable-to-next was measured to another item; measure it anew
                      - unit: Seedling North
                        role: follower
                        address: 2
                        termination: none
                        cable-to-next: 22 m
                      - equipment: Meter
                        address: 57
                        conductors: [A, B]
                        termination: none
                        # look: its idle-bias, isolated and unit-load; broadcasts: ignored or obeyed; who polls it
                        cable-to-next: 8 m
                      - unit: Fernery
                        role: follower
                        # look: its address is not in the list; the next free one is 58
                        termination: 120 ohm
                        # look: its vents; set vents: none, roof, side or roof-and-side
                        on-stale-readings: close
                    supervision:"""
                        .indent(0)
                        .stripTrailing())
                .replace("boiler\n  # the", "boiler\n\n  # the"));
    assertThat(remarks(list, SITE))
        .containsExactly(
            "warning: \"Hardening Bay\" (unit, address 4, vents: roof) is not in the list, and the difference removes it",
            "warning: The list has the items in another order: see that it is the order of the cable, and that each length is that to the item that follows",
            "warning: The length after \"Mist House\" was measured to another item; measure it");
  }

  /** Same name, same place, another controller: its old settings prove nothing of it. */
  @Test
  void anotherDeviceAtTheSamePlaceIsReported() {
    String site = SITE.replace("    address: 2\n", "    address: 2\n    device-type: eight-way\n");
    String list =
        """
        name,type,serial
        Propagation,,
        Seedling North,sixteen-way,HH-7
        Mist House,,HH-8
        Hardening Bay,,
        """;
    assertThat(after(list, site))
        .contains("    device-type: sixteen-way\n    serial-number: HH-7\n    termination: none\n");
    assertThat(remarks(list, site))
        .singleElement()
        .asString()
        .startsWith("warning: \"Seedling North\" is another device in the list;");
  }

  /** What a list has no rows for is not gone. */
  @Test
  void itemsOfOtherKindsStayWhereTheyAre() {
    String site =
        SITE.replace(
            "\n  # the new range",
            "  - repeater: Shed\n    termination: {in: 120 ohm, out: none}\n    cable-to-next: 5 m\n\n  # the new range");
    String list = LIST.replace("Mist House,3,30 m\n", "").replace("120 ft", "99 m");
    assertThat(after(list, site))
        .isEqualTo(
            site.replaceAll("\n  # the new range\n  - \\{unit: Mist.*\n", "")
                .replace(
                    "cable-to-next: 5 m\n",
                    "cable-to-next: 5 m\n    # look: cable-to-next was measured to another item; measure it anew\n"));
    assertThat(remarks(list, site))
        .contains(
            "warning: The length after \"Seedling North\" is left: what follows is not in the list",
            "note: Not in the list, and left as they are: \"Shed\"");
    String sides =
        """
        name,role,address,cable,termination
        Propagation,,1,40 m,
        Seedling North,,2,120 ft,
        Shed,repeater,,6 m,120 ohm/68 ohm
        Mist House,,3,30 m,
        Hardening Bay,,4,,
        """;
    assertThat(after(sides, site))
        .isEqualTo(
            site.replace("out: none}", "out: 68 ohm}")
                .replace("cable-to-next: 5 m", "cable-to-next: 6 m"));
  }

  /** What is said of a unit that leaves would be taken for said of the next one. */
  @Test
  void theCommentAboveAnItemLeavesWithIt() {
    String site =
        SITE.replace(
                "  - unit: Hardening Bay\n",
                "  # all:\n\n  # sensor broken\n  # vents by hand\n  - unit: Hardening Bay\n")
            + "notes: none\n";
    String list = LIST.replace("Hardening Bay,4,\n", "").replace("30 m", "");
    for (String text : List.of(site, site.replace("\n", "\r\n"))) {
      assertThat(after(list, text))
          .contains("  # all:")
          .doesNotContain("sensor broken")
          .doesNotContain("vents by hand");
      assertThat(remarks(list, text))
          .contains(
              "warning: \"Hardening Bay\" (unit, address 4, vents: roof) is not in the list, and the"
                  + " difference removes it with the comment above it");
    }
    String first = LIST.replace("Propagation,1,40 m\n", "");
    assertThat(after(first, SITE))
        .contains("chain:\n  - unit: Seedling North\n")
        .contains("  # the new range\n  - {unit: Mist House,");
  }

  /** The last unit leaves, and the one before it has no cable to go on. */
  @Test
  void theEndOfTheChainHasNoCable() {
    String list = LIST.replace("Hardening Bay,4,\n", "").replace("30 m", "");
    assertThat(after(list, SITE))
        .contains(
            "{unit: Mist House, role: follower, address: 3, termination: none, cable-to-next: none}\n");
    String longer = LIST + "Fernery,5,\n";
    assertThat(after(longer.replace("Hardening Bay,4,", "Hardening Bay,4,7 m"), SITE))
        .contains(
            "    address: 4\n    termination: 120 ohm\n    cable-to-next: 7 m\n  - unit: Fernery\n");
  }

  /** A record proves what was there, and no list renews it. */
  @Test
  void theRecordIsNeverTouched() {
    String record =
        """
        commissioning:
          date: 2026-03-14
          by: R.O.
          outdoor-readings-seen: [Seedling North, Mist House, Hardening Bay]
        """;
    String live = SITE.replace("planned", "commissioned") + record;
    String list =
        LIST.replace("Mist House", "Fog House")
            .replace("Hardening Bay,4,\n", "")
            .replace("30 m", "");
    assertThat(after(list, live))
        .endsWith(record)
        .contains("{unit: Fog House,")
        .doesNotContain("- unit: Hardening");
    assertThat(remarks(list, live))
        .containsExactly(
            "warning: \"Hardening Bay\" (unit, address 4, vents: roof) is not in the list, and the"
                + " difference removes it. It is on the live line: isolate the supply and take it off"
                + " before you take the difference",
            "warning: \"Mist House\" is \"Fog House\" in the list; its record and its suppressions keep"
                + " the old name: change them where it is the same unit, and prove it again where it is"
                + " another");
    assertThat(Lists.linter("").checkText("elm-row.yaml", after(list, live)).at(Level.ERROR))
        .anyMatch(result -> result.rule().equals("reference.unknown"));
  }

  /** A value that several share is changed for the one alone, or not at all. */
  @Test
  void sharedValues() {
    String site =
        SITE.replace("cable-to-next: 40 m", "cable-to-next: &run 40 m")
            .replace("cable-to-next: 120 ft", "cable-to-next: *run");
    assertThat(after(LIST, site)).isEqualTo(site.replace("*run", "120 ft"));
    String list = LIST.replace("1,40 m", "1,50 m").replace("120 ft", "40 m");
    assertThat(after(list, site)).isEqualTo(site);
    assertThat(remarks(list, site))
        .containsExactly(
            "warning: Not written, since other places share the value or its lines: cable-to-next of"
                + " \"Propagation\": 50 m; change it by hand");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'name,cable\nPropagation,4\nFerns,\n'     | chain                          | units.csv:2:13: error: the length \"4\" has no unit",
        "'name\nPropagation\n'                     | chain                          | units.csv:2:1: error: the list has 1 unit",
        "'name\nA\nB\n'                            | 'chain: ['                     | elm-row.yaml:1:1: error: the site cannot be read",
        "'name\nA\nB\n'                            | 'site: x\n'                    | elm-row.yaml:1:1: error: the site cannot be read",
        "'name\nA\nC\nB\n'                         | 'chain: [{unit: A}, {unit: B}]' | elm-row.yaml:1:1: error: the items of the chain cannot be moved as whole lines",
        "'name\nA\nC\nE\n'                         | 'chain:\n- unit: A\n- unit: &b B\n- unit: C\nz: *b\n' | elm-row.yaml:1:1: error: the items",
      })
  void whatCannotBeDoneIsRefused(String list, String site, String wanted) {
    SiteUpdate update = update(list, site.equals("chain") ? SITE : site);
    assertThat(update).isInstanceOf(SiteUpdate.Refused.class);
    assertThat(faults((SiteUpdate.Refused) update)).first().asString().startsWith(wanted);
  }

  /** Ends of lines, a byte order mark and a last line without an end stay as they are. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void theBytesAroundStay(String end) {
    String chainLast = SITE.replaceAll("(?s)supervision:.*", "").stripTrailing();
    String site = "\uFEFF" + chainLast.replace("\n", end);
    String list = LIST.replace("40 m", "41 m") + "Fernery,5,\n";
    String added =
        """

          - unit: Fernery
            role: follower
            address: 5
            termination: 120 ohm
            # look: its vents; set vents: none, roof, side or roof-and-side
            on-stale-readings: close\
        """;
    assertThat(after(list, site))
        .isEqualTo(site.replace("40 m", "41 m") + added.replace("\n", end));
  }

  /** Sites with single characters replaced, lines lost and doubled: an answer, and never harm. */
  @Test
  void noSiteEndsTheTool() {
    String marks = "\",:&*-#[]{}|>\r\n \t'!%a7\u0000\uFEFF\u2028é";
    String list = LIST.replace("Mist House", "Fernery").replace("40 m", "41 m") + "Palms,5,\n";
    double made =
        RandomCases.share(
            3000,
            random -> {
              StringBuilder site = new StringBuilder(SITE);
              for (int i = random.nextInt(5); i > 0; i--) {
                int at = random.nextInt(site.length());
                switch (random.nextInt(3)) {
                  case 0 -> site.setCharAt(at, marks.charAt(random.nextInt(marks.length())));
                  case 1 -> site.deleteCharAt(at);
                  default -> site.insert(at, marks.charAt(random.nextInt(marks.length())));
                }
              }
              SiteUpdate update = update(list, site.toString());
              if (update instanceof SiteUpdate.Made one) {
                String after = new String(one.after(), UTF_8);
                assertThat(update(list, after)).as(after).isInstanceOf(SiteUpdate.Made.class);
                return true;
              }
              assertThat(faults((SiteUpdate.Refused) update)).isNotEmpty();
              return false;
            });
    assertThat(made).isBetween(0.3, 0.95);
  }
}
