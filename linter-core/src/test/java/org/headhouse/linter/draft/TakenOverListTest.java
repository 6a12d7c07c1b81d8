package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A list of a line that exists: what it says is written, faults and all, and nothing is lost. */
class TakenOverListTest {
  private static final String LINE =
      """
      sep=;
      Role;Name;Address;Device type;Serial number;Firmware;Vents;Conductors;Termination (Ω);Stub (metres);Cable to next (feet)
      head unit;Propagation;1;eight-way;HH-0042;3.2;Roof + side;A B G;120;;140
      follower;Seedling North;4;eight-way;HH-0043;3.2;roof;A/B;none;0,5;120
      repeater;East Boiler Room;;;;;;;120 / 120;;100,5
      equipment;Dosing Rig;57;;;;;A, B;no;;66
      ;Hardening Bay;4;sixteen-way;;3.10;none;[A, B];120;;
      """;

  /** Two have address 4, and there is none of 2: an order of ours would hide both. */
  @Test
  void whatIsSetOnSiteIsWrittenAndChecked() {
    String text = Lists.made(LINE);
    assertThat(text.substring(text.indexOf("chain:")))
        .isEqualTo(
            """
            chain:
              - unit: Propagation
                role: head
                address: 1
                device-type: eight-way
                serial-number: HH-0042
                firmware: "3.2"
                comm-module: fitted
                conductors: [A, B, G]
                termination: 120 ohm
                outdoor: local
                vents: roof-and-side
                on-stale-readings: close
                cable-to-next: 140 ft
              - unit: Seedling North
                role: follower
                address: 4
                device-type: eight-way
                serial-number: HH-0043
                firmware: "3.2"
                comm-module: fitted
                termination: none
                vents: roof
                stub: 0.5 m
                cable-to-next: 120 ft
              - repeater: East Boiler Room
                conductors: [A, B]
                # look: its conductors, which the list does not say
                termination: {in: 120 ohm, out: 120 ohm}
                # look: its idle-bias, isolated and unit-load
                cable-to-next: 100.5 ft
              - equipment: Dosing Rig
                address: 57
                conductors: [A, B]
                termination: none
                # look: its idle-bias, isolated and unit-load; broadcasts: ignored or obeyed; who polls it
                cable-to-next: 66 ft
              - unit: Hardening Bay
                role: follower
                address: 4
                device-type: sixteen-way
                firmware: "3.10"
                comm-module: built-in
                termination: 120 ohm
                vents: none
            """);
    assertThat(Lists.results(Lists.linter(""), text))
        .anyMatch(result -> result.contains("address 4") && result.contains("[address.duplicate]"));
    assertThat(text)
        .contains(
            "# look: not in the list, so these are as they should be: outdoor, comm-module,"
                + " on-stale-readings;\n# compare each unit with them\n")
        .contains("# look: where the bias of each segment is")
        .doesNotContain("its vents;");
  }

  /** What a row leaves open is asked, and never filled in. */
  @Test
  void whatARowLeavesOpenStaysOpen() {
    String text =
        Lists.made(
            """
            name,role,address,vents,termination,cable
            Palms,,1,roof,120 ohm,4 m
            Cacti,,,-,,5 m
            Ferns,,3,side,120 ohm + 1 nF,
            """);
    assertThat(text)
        .contains(
            """
              - unit: Cacti
                role: follower
                # look: its address is not in the list; read it at the unit
                # look: its vents; set vents: none, roof, side or roof-and-side
                cable-to-next: 5 m
            """)
        .contains("    termination: 120 ohm + 1 nF\n");
    assertThat(Lists.results(Lists.linter(""), text))
        .anyMatch(result -> result.contains(" has no address") || result.contains("\"address\""))
        .anyMatch(result -> result.endsWith("[termination.undeclared]"));
  }

  /** Whether vents close in a storm is not said by a cell that nobody filled in. */
  @Test
  void whatAUnitDoesWithoutReadingsIsNotTakenForSafe() {
    String text =
        Lists.made(
            """
            name,address,vents,on-stale-readings,cable
            Palms,1,none,close,4 m
            Cacti,2,roof,,5 m
            Ferns,3,side,hold,
            """);
    assertThat(text)
        .contains(
            """
                vents: roof
                # look: its on-stale-readings, which the list does not say
                cable-to-next: 5 m
            """)
        .contains("on-stale-readings: hold\n");
    assertThat(Lists.results(Lists.linter(""), text))
        .filteredOn(result -> result.endsWith("[outdoor.unsafe-fallback]"))
        .hasSize(2);
    assertThat(Lists.made("name,vents,cable\nPalms,none,4 m\nCacti,roof,\n"))
        .contains("vents: roof\n    on-stale-readings: close\n");
  }

  /** Addresses of equipment are taken, and none is handed out twice. */
  @Test
  void addressesAreHandedOutAroundEquipment() {
    String text =
        Lists.made(
            "name,kind,address,cable\nPalms,,,4 m\nMeter,equipment,2,3 m\nCacti,unit,,2 m\nFerns,,,\n");
    assertThat(text.lines().filter(line -> line.startsWith("    address: ")))
        .extracting(line -> line.substring(13))
        .containsExactly("1", "2", "3", "4");
    assertThat(text)
        .contains("# look: the list has no addresses, and these are handed out along the chain;");
    assertThat(Lists.faults("name,kind,cable\nPalms,,4 m\nMeter,equipment,3 m\nCacti,,\n"))
        .singleElement()
        .asString()
        .startsWith("units.csv:3:1: error: the equipment \"Meter\" has no address in the list");
  }

  @Test
  void softwareIsAskedFor() {
    assertThat(Lists.made("name,cable\nPalms,4 m\nCacti,\n"))
        .contains("# look: whether supervising software asks the units;");
    assertThat(Lists.made("name,role,cable\nOffice,converter,2 m\nPalms,,4 m\nCacti,,\n"))
        .contains("# look: the software at Office; add supervision with link: serial,")
        .contains("  at: Palms\n")
        .contains(
            """
              - converter: Office
                conductors: [A, B]
                termination: 120 ohm
                # look: its idle-bias, isolated and unit-load
                cable-to-next: 2 m
            """);
  }

  /** The head unit is what the list says, wherever it is. */
  @Test
  void theHeadUnitIsThatOfTheList() {
    String text =
        Lists.made("name,role,cable\nPalms,follower,4 m\nCacti,head,2 m\nFerns,follower,\n");
    assertThat(text).contains("  at: Cacti\n").contains("  - unit: Cacti\n    role: head\n");
    assertThat(Lists.results(Lists.linter(""), text))
        .anyMatch(result -> result.contains("Cacti") && result.contains("error"));
  }

  /** {@code |} stands for the end of a row, and ^ for a tab. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '\0',
      value = {
        "name,cable,address|A,4 m,0x0A|B~2:7 the address \"0x0A\" is not understood",
        "name,cable,address|A,4 m,256|B~2:7 the address \"256\" is not understood",
        "name,cable,address|A,4 m,1.0|B~2:7 the address \"1.0\" is not understood",
        "name,cable,adress|A,4 m,1|B~1:12 the heading \"adress\" is not known: the column would be left out; write address",
        "name,cable,role|A,4 m,chief|B~2:7 the role \"chief\" is not known",
        "name,cable,vents|A,4 m,yes|B~2:7 the cell \"yes\" is not understood as vents: what is set at the item would be missing in the site; write one of none, roof, side, roof-and-side",
        "name,cable,role,vents|A,4 m|R,5 m,repeater,roof|B~3:16 a repeater has no vents",
        "name,cable,role,address|A,4 m|R,5 m,converter,9|B~3:17 a converter has no address",
        "name,cable,conductors|A,4 m,A D|B~2:7 the conductors \"A D\" are not understood",
        "name,cable,conductors|A,4 m,A A|B~2:7 the conductors \"A A\" are not understood",
        "name,cable,termination|A,4 m,120|B~2:7 the termination \"120\" has no unit",
        "name,cable,termination|A,4 m,yes|B~2:7 the termination \"yes\" is not understood",
        "name,cable,termination|A,4 m,120 ohm + 1 uF|B~2:7 the termination \"120 ohm + 1 uF\" is not understood",
        "name,cable,role,termination|A,4 m|R,5 m,repeater,120 ohm|B~3:16 the termination \"120 ohm\" of a repeater does not name its two sides",
        "name,cable,stub (ohm)|A,4 m,5|B~-",
        "name;cable|A;1.234 m|B;2,5 m|C~2:3 the length \"1.234 m\" can be read in two ways: a point before three digits marks thousands where the comma is the decimal sign; write 1234 or 1.2340, whichever is meant",
        "name;cable|A;1.234 m|B~2:3 the length \"1.234 m\" can be read in two ways",
        "name;cable|A;1.234 m|B;2.5 m|C~-",
        "name^cable|A^1.234 m|B~2:3 the length \"1.234 m\" can be read in two ways",
        "name,cable|A,1.234 m|B~-",
        "name,cable|A,\"1,234 m\"|B~2:3 the length \"1,234 m\" can be read in two ways",
        "name;cable|A;0,125 m|B~-",
        "name;cable;stub|A;1.234 m;|B;;2,5 m|C~2:3 the length \"1.234 m\" can be read in two ways",
        "sep=^|name^cable|A^4|B~3:3 the length \"4\" has no unit",
        "\"sep=;\"|name;cable|A;4|B~3:3 the length \"4\" has no unit",
        "name^cable|A^4|B~2:3 the length \"4\" has no unit",
        "name^cable^vents|A^^x|B~2:4 the cell \"x\" is not understood as vents",
      })
  void cellsThatAreNotUnderstood(String list, String wanted) {
    String text = list.replace('|', '\n').replace('^', '\t');
    if (wanted.equals("-")) {
      assertThat(Lists.made(text)).contains("- unit: A\n");
      return;
    }
    String[] placeAndFact = wanted.split(" ", 2);
    assertThat(Lists.faults(text))
        .first()
        .asString()
        .startsWith("units.csv:" + placeAndFact[0] + ": error: " + placeAndFact[1]);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "length (metres)        | 42         | 42 m",
        "length (feet)          | 42,5       | 42.5 ft",
        "length in feet         | 42         | 42 ft",
        "cable [meters]         | 42         | 42 m",
        "cable                  | 42\u00A0m  | 42 m",
        "cable\u00A0to\u202Fnext | 42 metres | 42 m",
        "cable                  | 42 Feet    | 42 ft",
        "cable_m                | 12,3456    | 12.3456 m",
        "cable (m)              | 1234,567   | 1234.567 m",
      })
  void lengths(String heading, String written, String wanted) {
    String list = "name;" + heading + "\nPropagation;" + written + "\nHardening Bay;\n";
    assertThat(Lists.made(list)).contains("\n    cable-to-next: " + wanted + "\n");
  }

  /** Fourteen houses with the same controllers are read at a glance. */
  @Test
  void whatAllFollowersShareIsWrittenOnce() {
    StringBuilder list = new StringBuilder("name,vents,cable (m),device-type\n");
    for (int i = 1; i <= 14; i++) {
      list.append("House ").append(i).append(",roof,").append(i < 14 ? "40" : "");
      list.append(",eight-way\n");
    }
    String text = Lists.made(list.toString());
    assertThat(text).containsOnlyOnce("outdoor: head").containsOnlyOnce("outdoor: local");
    List<String> chain = text.substring(text.indexOf("chain:")).lines().toList();
    assertThat(chain).hasSizeLessThan(1 + 14 * 5 + 7);
    assertThat(chain)
        .containsSequence(
            "  - unit: House 7",
            "    role: follower",
            "    address: 7",
            "    termination: none",
            "    cable-to-next: 40 m");
    assertThat(Lists.results(Lists.linter(""), text)).noneMatch(line -> line.contains(" error: "));
  }

  /** Nothing but the units loads the pair then, and any resistors hold it. */
  @Test
  void aLineWithoutTerminatorsCanBeHeld() {
    assertThat(Lists.made("name,cable,termination\nPalms,4 m,none\nCacti,,none\n"))
        .contains("  #   - {at: Palms, resistors: 620 ohm, supply: 5 V}\n");
    assertThat(Lists.made("name,cable,termination\nPalms,4 m,none\nCacti,,-\n"))
        .contains(
            "# look: bias cannot be computed before every length of cable is known, and every");
  }

  /** Fixes change what is wrong where it is written, and write nothing out for each unit. */
  @Test
  void fixesLeaveTheDefaultsTogether() {
    String text =
        Lists.made("name,address,cable\nPalms,1,4 m\nCacti,2,5 m\nFerns,4,\n")
            .replace("conductors: [A, B]\n", "conductors: [A]\n");
    FixedSite fixed =
        Fixing.outcome(Lists.USUAL, SiteInput.text("elm-row.yaml", text), FixKind.PROPOSED);
    String after = new String(fixed.after(), UTF_8);
    assertThat(fixed.applied()).isNotEmpty();
    for (String shared : List.of("outdoor: head", "comm-module: fitted", "on-stale-readings:")) {
      assertThat(count(after, shared)).as(after).isEqualTo(count(text, shared));
    }
  }

  private static long count(String text, String part) {
    return text.lines().filter(line -> line.contains(part)).count();
  }

  /** Two units answer at 4: a new number in the file alone would hide that. */
  @Test
  void noSafeFixChangesADraftOfALineThatExists() throws IOException {
    String draft = Lists.made(LINE);
    SiteLinter linter = SiteLinter.builder().build();
    List<String> before = setOnSite(draft);
    assertThat(before).contains("    address: 4");
    assertThat(setOnSite(Fixing.fix(linter, "example.yaml", draft, FixKind.SAFE)))
        .isEqualTo(before);
    assertThat(setOnSite(Fixing.fix(linter, "example.yaml", draft, FixKind.PROPOSED)))
        .isNotEqualTo(before);
  }

  private static List<String> setOnSite(String text) {
    return text.lines()
        .filter(line -> line.matches(" *(address|termination|bias|baud|parity|stop-bits):.*"))
        .toList();
  }
}
