package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A list that is understood: what it becomes, and what of the site stays. */
class VisitRecordTest {
  private static final String SEEN =
      "outdoor readings seen (yes),Seedling North,,yes,R.O.,2026-03-14,";
  private static final String OHMS = "pair resistance (ohm),Propagation,,62,R.O.,2026-03-14,";

  private static final String RECORD =
      """
      commissioning:
        date: 2026-03-14
        by: R.O.
        measured:
          pair-resistance: 62 ohm
        outdoor-readings-seen:
          - Seedling North
      """;

  @Test
  void theFirstVisitBeginsTheRecord() {
    assertThat(
            Visits.added(
                Visits.SITE,
                SEEN,
                "outdoor readings seen (yes),Hardening Bay,,no,R.O.,2026-03-14,display dark",
                "storm response: vents shut in (s),Seedling North,at most 90 s,85,R.O.,2026-03-14,",
                "storm response: wind limit (m/s),Seedling North,,12,R.O.,2026-03-14,set back",
                "storm response: vents shut in (s),Hardening Bay,,yes,R.O.,2026-03-14,",
                "vents shut without readings (yes),Hardening Bay,,✓,R.O.,2026-03-14,",
                "pair resistance (ohm),Propagation,53 to 66 ohm,62,R.O.,2026-03-14,",
                "idle voltage (V),Propagation,,-0.05,R.O.,2026-03-14,leads swapped?",
                "\"pair resistance (ohm)\",\"East Boiler Room, side out\",,61.5,R.O.,2026-03-14,",
                "idle voltage (V),\"East Boiler Room, side out\",,250 mV,R.O.,2026-03-14,"))
        .isEqualTo(
            """
            commissioning:
              date: 2026-03-14
              by: R.O.
              # look: outdoor readings seen, Hardening Bay: not seen on 2026-03-14 by R.O.; display dark
              measured:
                pair-resistance: 62 ohm
                # leads swapped?
                idle-voltage: -0.05 V
                elsewhere:
                  - {at: East Boiler Room, side: out, pair-resistance: 61.5 ohm, idle-voltage: 250 mV}
              outdoor-readings-seen:
                - Seedling North
              storm-response-seen:
                # set back
                - {unit: Seedling North, limit: 12 m/s, closed-in: 85 s}
                - Hardening Bay
              stale-response-seen:
                - Hardening Bay
            """);
  }

  /** Vents that are set to stay where they are were not seen to shut, and are in the same list. */
  @Test
  void ventsThatStayedAreSeenToDoSo() {
    String site = Visits.SITE.replace("on-stale-readings: close", "on-stale-readings: hold");
    String stayed =
        "vents stay where they are without readings (yes),Hardening Bay,,yes,R.O.,2026-03-14,";
    String after = Visits.after(site, stayed);
    assertThat(Added.of(site, after)).endsWith("  stale-response-seen:\n    - Hardening Bay\n");
    assertThat(Visits.after(after, stayed)).isEqualTo(after);
    assertThat(Visits.remarks(after, stayed.replace(",yes,", ",no,").replace("03-14", "04-14")))
        .contains(
            "warning: Not seen: vents stay where they are without readings, Hardening Bay. A record"
                + " says that it was seen before: set stage: planned until it is proved again");
  }

  @Test
  void furtherVisitsRenewIt() {
    String later = SEEN.replace("03-14", "05-02").replace("R.O.", "Kim Ash");
    String after = Visits.after(Visits.SITE, later, OHMS);
    assertThat(Added.of(Visits.SITE, after))
        .isEqualTo(
            """
            commissioning:
              date: 2026-03-14
              by: R.O.
              measured:
                pair-resistance: 62 ohm
              renewed:
                - date: 2026-05-02
                  by: Kim Ash
                  reason: visit
                  outdoor-readings-seen:
                    - Seedling North
            """);
    assertThat(Visits.added(after, OHMS.replace("03-14", "06-01").replace("62", "63")))
        .isEqualTo(
            """
                - date: 2026-06-01
                  by: R.O.
                  reason: visit
                  measured:
                    pair-resistance: 63 ohm
            """);
  }

  /** What the row of the site remarks is of the visit. */
  @Test
  void theReasonIsAskedForInTheRowOfTheSite() {
    String list =
        Visits.HEADINGS + "site,elm-row,,,,,Hardening Bay: exchanged\n" + OHMS.replace("62", "63");
    String again = list.replace("03-14", "06-01");
    assertThat(afterList(Visits.SITE, list)).contains("  # Hardening Bay: exchanged\n  measured:");
    assertThat(afterList(Visits.SITE + RECORD, again))
        .contains("      reason: \"Hardening Bay: exchanged\"\n");
  }

  private static String afterList(String site, String list) {
    return new String(Visits.made(list.getBytes(UTF_8), site.getBytes(UTF_8)).after(), UTF_8);
  }

  @Test
  void aSecondRunChangesNothing() {
    String after = Visits.after(Visits.SITE, SEEN, OHMS + "warm");
    assertThat(Visits.after(after, SEEN, OHMS + "warm")).isEqualTo(after);
    assertThat(Visits.remarks(after, SEEN, OHMS + "warm")).noneMatch(one -> one.contains("Not w"));
    // The same in another unit.
    assertThat(Visits.after(after, OHMS.replace("62", "0.062 kohm"))).isEqualTo(after);
  }

  /** The rest of a visit that came in two parts. */
  @Test
  void whatTheRecordLacksOfADayIsAdded() {
    String first = Visits.after(Visits.SITE, OHMS);
    assertThat(Visits.added(first, SEEN, OHMS))
        .isEqualTo(
            """
              renewed:
                - date: 2026-03-14
                  by: R.O.
                  reason: visit
                  outdoor-readings-seen:
                    - Seedling North
            """);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-", "–", "   "})
  void aBlankIsNothing(String blank) {
    String row = SEEN.replace(",yes,", "," + blank + ",");
    assertThat(Visits.after(Visits.SITE, row)).isEqualTo(Visits.SITE);
    assertThat(Visits.added(Visits.SITE, row.replace("Seedling North", "Hardening Bay"), OHMS))
        .doesNotContain("outdoor");
    assertThat(Visits.remarks(Visits.SITE, row))
        .containsExactly("note: 1 row is blank, and counts as not seen");
  }

  @Test
  void aRemarkOnABlankIsOfTheOnlyVisit() {
    assertThat(
            Visits.added(
                Visits.SITE, "vents shut without readings (yes),Hardening Bay,,,,,frost", OHMS))
        .contains("  # vents shut without readings, Hardening Bay: frost\n  measured:\n");
    assertThat(
            Visits.remarks(
                Visits.SITE, "vents shut without readings (yes),Hardening Bay,,,,,frost"))
        .contains("warning: Not written: vents shut without readings, Hardening Bay: frost");
  }

  /** Nobody may take what was not seen for proved because an older record says so. */
  @Test
  void whatIsNotSeenAnyMoreIsAWarning() {
    String site = Visits.after(Visits.SITE, SEEN);
    assertThat(Visits.remarks(site, SEEN.replace(",yes,", ",no,").replace("03-14", "05-02")))
        .contains(
            "warning: Not seen: outdoor readings seen, Seedling North. A record says that it was"
                + " seen before: set stage: planned until it is proved again");
  }

  /** Also where nothing was seen at all: each way in which a record can be in the site. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '^',
      value = {
        "''^ ''",
        "commissioning:\\n  date: 2026-03-14\\n  by: R.O.\\n^ '  '",
        "commissioning:\\n  date: 2026-03-14\\n  by: |\\n    R.O.\\n^ '  '",
        "commissioning:\\n  date: 2026-03-14\\n  by: R.O.\\n  renewed:\\n    - date: 2026-04-01\\n      by: R.O.\\n^ '    '"
      })
  void whatWasNotSeenIsOpenWhateverElseTheListHas(String record, String indent) {
    String site = Visits.SITE + record.replace("\\n", "\n");
    String row = SEEN.replace(",yes,", ",no,").replace("03-14", "05-02") + "display dark";
    assertThat(Visits.added(site, row))
        .isEqualTo(
            indent
                + "# look: outdoor readings seen, Seedling North: not seen on 2026-05-02 by R.O.;"
                + " display dark\n");
    String after = Visits.after(site, row);
    assertThat(Visits.after(after, row)).isEqualTo(after);
    assertThat(Visits.remarks(site, row)).noneMatch(one -> one.contains("Not written"));
    // Somebody has moved the comment to the unit.
    String open = after.substring(site.length()).strip();
    String moved =
        site.replace(
            "role: follower\n    address: 2", "role: follower  " + open + "\n    address: 2");
    assertThat(moved).contains(open);
    assertThat(Visits.after(moved, row)).isEqualTo(moved);
    // It was seen later, and somebody has deleted the comment.
    String seen = Visits.after(after, SEEN.replace("03-14", "06-01"));
    String dealt = seen.replace(indent + open + "\n", "");
    assertThat(dealt).isNotEqualTo(seen).contains("date: 2026-06-01");
    assertThat(Visits.after(dealt, row)).isEqualTo(dealt);
  }

  /** A list that comes late says nothing of what a later visit saw. */
  @Test
  void whatALaterVisitSawIsNotOpen() {
    String site = Visits.after(Visits.SITE, SEEN.replace("03-14", "06-01"));
    String row = SEEN.replace(",yes,", ",no,").replace("03-14", "05-02");
    assertThat(Visits.added(site, row, OHMS.replace("03-14", "05-02")))
        .contains("# outdoor readings seen, Seedling North: not seen\n")
        .doesNotContain("look:");
    assertThat(Visits.remarks(site, row))
        .contains("note: Not seen then, but on a later day: outdoor readings seen, Seedling North");
    // On the same day nobody can tell which came first.
    assertThat(Visits.added(site, row.replace("05-02", "06-01").replace("R.O.", "Kim Ash")))
        .contains("# look: outdoor readings seen, Seedling North: not seen on 2026-06-01 by Kim");
  }

  @Test
  void aWindLimitAloneIsAComment() {
    String limit = "storm response: wind limit (m/s),Hardening Bay,,12,R.O.,2026-03-14,";
    assertThat(Visits.added(Visits.SITE, limit, OHMS))
        .contains("  # storm response: wind limit, Hardening Bay: 12 m/s\n")
        .doesNotContain("storm-response-seen");
  }

  /** A mark of a draft would ask for something in the name of the tool. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "look: at it | # remark: look: at it",
        "`\"two\nlines\t#here\"` | # two lines #here",
        "`\"a\u0085b\u2028c\u202Ed\"` | # a b c d",
        "=1+1 | # =1+1"
      })
  void aRemarkIsOneLine(String remark, String comment) {
    assertThat(Visits.added(Visits.SITE, OHMS + remark))
        .contains("\n    " + comment + "\n    pair-resistance: 62 ohm\n");
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "'62, 62 ohm",
        "62, 62 ohm",
        "61.50, 61.50 ohm",
        "`\"61,5\"`, 61.5 ohm",
        "62 Ω, 62 ohm",
        "62\u00A0Ohm, 62 ohm",
        "0.062 kΩ, 0.062 kohm",
        "+62, 62 ohm",
        "5800, 5800 ohm"
      })
  void aResistanceIsUnderstood(String found, String written) {
    assertThat(Visits.added(Visits.SITE, OHMS.replace(",62,", "," + found + ",")))
        .contains("pair-resistance: " + written + "\n");
  }

  @ParameterizedTest
  @CsvSource({
    "0.29, 0.29 V",
    "'\"0,287\"', 0.287 V",
    ".29, 0.29 V",
    "-.29, -0.29 V",
    "−0.05 v, -0.05 V",
    "290 mV, 290 mV",
    "-50mV, -50 mV"
  })
  void aVoltageIsUnderstood(String found, String written) {
    assertThat(
            Visits.added(
                Visits.SITE, "idle voltage (V),Propagation,," + found + ",R.O.,2026-03-14,"))
        .contains("idle-voltage: " + written + "\n");
  }

  @ParameterizedTest
  @CsvSource({
    "85, 12, 'limit: 12 m/s, closed-in: 85 s'",
    "1.5 min, 43 km/h, 'limit: 43 km/h, closed-in: 1.5 min'",
    "85 sec, 27mph, 'limit: 27 mph, closed-in: 85 s'",
    "85, '', 'closed-in: 85 s'",
    "yes, 12, 'limit: 12 m/s'"
  })
  void aStormIsUnderstood(String time, String limit, String written) {
    assertThat(
            Visits.added(
                Visits.SITE,
                "storm response: vents shut in (s),Hardening Bay,," + time + ",R.O.,2026-03-14,",
                "storm response: wind limit (m/s),Hardening Bay,," + limit + ",R.O.,2026-03-14,"))
        .contains("- {unit: Hardening Bay, " + written + "}\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"yes", "Y", "x", "OK", "seen", "✓", "✔"})
  void aYesIsUnderstood(String yes) {
    assertThat(Visits.added(Visits.SITE, SEEN.replace(",yes,", "," + yes + ",")))
        .contains("- Seedling North");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'t Hart | \"'t Hart\"",
        "R.O. | R.O.",
        "Robin Oakfield | Robin Oakfield",
        "yes: no | \"yes: no\"",
        "Ñandú Pérez | Ñandú Pérez",
        "true | \"true\""
      })
  void aNameIsATextForEveryReader(String by, String written) {
    assertThat(Visits.added(Visits.SITE, SEEN.replace("R.O.", "\"" + by + "\"")))
        .contains("  by: " + written + "\n");
  }

  /** Each ends a site in its own way; the record is added as lines of their kind. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "\n\n",
        "    # it is the last\n",
        "# end\n",
        "notes: \"a\n  b\"\n",
        "notes: |\n  a\n  b\n",
        "notes: |+\n  a\n\n",
        "notes:\n",
        "...\n"
      })
  void theRecordIsAddedAtTheEnd(String end) {
    String site = Visits.SITE + end;
    assertThat(Visits.added(site, OHMS, SEEN)).isEqualTo(RECORD);
    String windows = site.replace("\n", "\r\n");
    assertThat(Visits.after(windows, OHMS, SEEN))
        .isEqualTo(Visits.after(site, OHMS, SEEN).replace("\n", "\r\n"));
    String marked = "\uFEFF" + site;
    assertThat(Visits.after(marked, OHMS, SEEN))
        .isEqualTo("\uFEFF" + Visits.after(site, OHMS, SEEN));
  }

  @Test
  void aLastLineWithoutAnEndHasNone() {
    String open = Visits.SITE.stripTrailing();
    assertThat(Visits.after(open, OHMS, SEEN)).isEqualTo(open + "\n" + RECORD.stripTrailing());
  }

  @Test
  void theStyleOfTheRecordIsKept() {
    String site =
        Visits.SITE
            + """
            commissioning:   # by hand
                date: '2026-03-14'
                by: "R.O."
                renewed:
                - date: 2026-04-01   # a Wednesday
                  by: R.O.
                  outdoor-readings-seen: [Hardening Bay]
                  # the display was new
                # and the next
            suppressions: []
            """;
    assertThat(Visits.added(site, SEEN.replace("03-14", "05-02")))
        .isEqualTo(
            """
                - date: 2026-05-02
                  by: R.O.
                  reason: visit
                  outdoor-readings-seen:
                    - Seedling North
            """);
    assertThat(Visits.after(site, SEEN.replace("03-14", "05-02")))
        .contains("the display was new\n    - date: 2026-05-02\n")
        .endsWith("    # and the next\nsuppressions: []\n");
  }
}
