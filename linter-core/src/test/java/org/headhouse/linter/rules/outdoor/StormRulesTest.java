package org.headhouse.linter.rules.outdoor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sums are computed by hand: at 9600 bit/s a broadcast of 12 registers takes 37.8125 ms from
 * its first bit to its last, and comes every 5 s.
 */
class StormRulesTest {
  private static final String LATE = "outdoor.closes-too-late";
  private static final String STALE = "outdoor.stale-time";
  private static final String UNKNOWN = "outdoor.age-unknown";
  private static final String FALLBACK = "outdoor.unsafe-fallback";
  private static final String STORM = "averaging: 10 s, close-within: ";

  /** The head unit and the last of two followers move vents. */
  private static LineCheck of(String station, String head, String follower) {
    return LineCheck.of(
        new SiteText()
            .station("[light, wind-speed], " + station)
            .broadcast(12, "5 s")
            .unit("120 ohm", "10 m", head)
            .unit("none", "10 m", "vents: none")
            .unit("120 ohm", "", follower));
  }

  private static String vents(String keys) {
    return "vents: roof\n    " + keys.replace("; ", "\n    ");
  }

  private static final String HEAD = vents("on-stale-readings: close; close-time: 20 s");
  private static final String CLOSING =
      vents("on-stale-readings: close; stale-after: 60 s; close-time: 90 s");

  private static List<String> expected(String reported) {
    return reported.isEmpty() ? List.of() : List.of(reported.split(" \\+ "));
  }

  /** 10 + max(10.038, 0.038 + 60) + 90 s. */
  @ParameterizedTest
  @CsvSource({"160.04 s, ''", "160.03 s, error " + LATE, "10 min, ''"})
  void aFollowerOnADeadLine(String within, String reported) {
    LineCheck check = of(STORM + within, HEAD, CLOSING);
    assertThat(check.reported()).isEqualTo(expected(reported));
    if (!reported.isEmpty()) {
      assertThat(check.marked(LATE)).isEqualTo("60 s");
      assertThat(check.reportedBy(LATE).get(0))
          .contains("\"Bay 3\" can take 160.04 s from the gust to closed vents; the site allows ")
          .contains("10.0 s averaging + 60.0 s on a dead line (stale-after 60 s) + 90.0 s closing");
    }
  }

  /**
   * 10 + max(25.038, 0.038 + 15) + 90 s: four broadcasts are lost, and the unit waits for three.
   */
  @ParameterizedTest
  @CsvSource({"125.04 s, ''", "125.03 s, error " + LATE})
  void aFollowerOnALivingLine(String within, String reported) {
    LineCheck check =
        of(STORM + within, HEAD, CLOSING.replace("60 s", "15 s"))
            .parameter("outdoor.too-old", "lost", "4");
    assertThat(check.reported()).isEqualTo(expected(reported));
    if (!reported.isEmpty()) {
      assertThat(check.marked(LATE)).isEqualTo("90 s");
      assertThat(check.reportedBy(LATE).get(0)).contains("25.0 s age of the reading");
    }
  }

  /** 10 + 10.038 + 90 s; that it stays open on a dead line is a fault of its own. */
  @ParameterizedTest
  @CsvSource({
    "hold, 110.04 s, ''",
    "hold, 110.03 s, error",
    "alarm, 110.04 s, ''",
    "alarm, 110.03 s, error"
  })
  void aFollowerThatStaysOpen(String action, String within, String level) {
    LineCheck check =
        of(STORM + within, HEAD, vents("on-stale-readings: " + action + "; close-time: 90 s"));
    assertThat(check.rules())
        .containsExactlyElementsOf(level.isEmpty() ? List.of(FALLBACK) : List.of(FALLBACK, LATE));
  }

  @ParameterizedTest
  @CsvSource({
    "160.04 s, warning " + FALLBACK,
    "160.03 s, error " + LATE + " + warning " + FALLBACK
  })
  void aFollowerThatDoesNotSayIsTakenToClose(String within, String reported) {
    LineCheck check = of(STORM + within, HEAD, vents("stale-after: 60 s; close-time: 90 s"));
    assertThat(check.reported()).containsExactlyInAnyOrderElementsOf(expected(reported));
  }

  @Test
  void closingWithAnAlarmIsClosing() {
    LineCheck check =
        of(STORM + "160.03 s", HEAD, CLOSING.replace(": close\n", ": close-and-alarm\n"));
    assertThat(check.rules()).containsExactly(LATE);
  }

  /** 10 + 90 s: the station is wired to it. */
  @ParameterizedTest
  @CsvSource({"100 s, ''", "99.9 s, error " + LATE})
  void theHeadUnit(String within, String reported) {
    LineCheck check = of(STORM + within, HEAD.replace("20 s", "90 s"), "vents: none");
    assertThat(check.reported()).isEqualTo(expected(reported));
    if (!reported.isEmpty()) {
      assertThat(check.marked(LATE)).isEqualTo("90 s");
      assertThat(check.reportedBy(LATE).get(0))
          .contains("(10.0 s averaging + 90.0 s closing)")
          .contains("let the vents close in 89.5 s");
    }
  }

  /** 10 + 60.038 s without the closing: 70 s are over, whatever it takes. */
  @ParameterizedTest
  @CsvSource({"70.04 s, ''", "70.03 s, error " + LATE})
  void theKnownPartAloneMayBeTooLong(String within, String reported) {
    LineCheck check =
        of(STORM + within, HEAD, vents("on-stale-readings: close; stale-after: 60 s"));
    assertThat(check.rules()).contains(UNKNOWN);
    assertThat(check.rules().contains(LATE)).isEqualTo(!reported.isEmpty());
    if (!reported.isEmpty()) {
      assertThat(check.reportedBy(LATE).get(0))
          .contains("takes at least 70.04 s")
          .contains(", and what is not known)");
    }
  }

  private static final Pattern STALE_AFTER = Pattern.compile("stale-after: ([0-9.]+ s)");

  /** What is offered is the most that does. */
  @ParameterizedTest
  @CsvSource({"150 s", "2 min", "115.1 s"})
  void aShorterWaitIsOffered(String within) {
    LineCheck check = of(STORM + within, HEAD, CLOSING);
    Result result = check.results().get(0);
    Matcher offered = STALE_AFTER.matcher(result.message().remedy());
    assertThat(offered.find()).as(result.message().remedy()).isTrue();
    assertThat(result.fix()).isNotNull();
    assertThat(check.with("stale-after: 60 s", "stale-after: " + offered.group(1)).reported())
        .isEmpty();
  }

  /** With three periods of 5 s no wait is short enough; a shorter period is. */
  @Test
  void aShorterPeriodIsOffered() {
    LineCheck check = of(STORM + "112 s", HEAD, CLOSING);
    Result result = check.results().get(0);
    assertThat(result.message().remedy())
        .startsWith(
            "set the head unit and the file to every: 3.9 s for the broadcast, and the unit to"
                + " stale-after: 11.5 s");
    assertThat(result.fix()).isNull();
    assertThat(
            check
                .with("every: 5 s", "every: 3.9 s")
                .with("stale-after: 60 s", "stale-after: 11.5 s")
                .rules())
        .doesNotContain(LATE);
  }

  /** 600 + 20 s of the head unit in 3 min: 160 s are left for the averaging. */
  @Test
  void whatTakesTheTimeIsToBeShortened() {
    LineCheck check = of("averaging: 10 min, close-within: 3 min", HEAD, "vents: none");
    assertThat(check.reported()).containsExactly("error " + LATE);
    assertThat(check.results().get(0).message().remedy())
        .startsWith("average the wind over 160 s at most, or agree");
    assertThat(check.with("averaging: 10 min", "averaging: 160 s").reported()).isEmpty();
  }

  private static LineCheck proved(String within, String closeTime, String seen) {
    LineCheck check =
        of(STORM + within, HEAD, CLOSING.replace("close-time: 90 s", closeTime))
            .with("stage: planned", "stage: commissioned");
    return new LineCheck(
        check.site()
            + "commissioning: {date: 2020-01-01, by: R.O., outdoor-readings-seen: [Bay 2, Bay 3],"
            + " stale-response-seen: [Head House, Bay 3], storm-response-seen: [Head House, "
            + seen
            + "]}\n",
        check.deviceTypes(),
        check.policy());
  }

  private static List<String> storm(LineCheck check) {
    return check.reported().stream()
        .filter(one -> one.endsWith(LATE) || one.endsWith(UNKNOWN))
        .toList();
  }

  /** 10 + 60.038 + what counts. */
  @ParameterizedTest
  @CsvSource({
    // By the watch, at the limit: in place of what is written.
    "155.04 s, close-time: 90 s, '{unit: Bay 3, limit: 12 m/s, closed-in: 85 s}', ''",
    "155.03 s, close-time: 90 s, '{unit: Bay 3, limit: 12 m/s, closed-in: 85 s}', error " + LATE,
    "155.04 s, vents: roof, '{unit: Bay 3, limit: 12 m/s, closed-in: 85 s}', ''",
    // Without the limit nobody knows what was proved.
    "160.03 s, close-time: 90 s, '{unit: Bay 3, closed-in: 85 s}', error " + LATE,
    "160.04 s, close-time: 90 s, '{unit: Bay 3, closed-in: 85 s}', ''",
    "10 min, vents: roof, '{unit: Bay 3, closed-in: 85 s}', warning " + UNKNOWN,
    // A longer one is a fault, whether or not the sum is.
    "10 min, close-time: 90 s, '{unit: Bay 3, limit: 12 m/s, closed-in: 91 s}', error " + LATE,
    "10 min, close-time: 90 s, '{unit: Bay 3, closed-in: 91 s}', error " + LATE,
    "161 s, close-time: 90 s, '{unit: Bay 3, limit: 12 m/s, closed-in: 91 s}', error " + LATE,
    "10 min, close-time: 90 s, '{unit: Bay 3, limit: 12 m/s, closed-in: 90 s}', ''",
    // A name alone says nothing of the time.
    "160.04 s, close-time: 90 s, Bay 3, ''",
    "160.03 s, close-time: 90 s, Bay 3, error " + LATE,
  })
  void whatTheWatchShowed(String within, String closeTime, String seen, String reported) {
    LineCheck check = proved(within, closeTime, seen);
    if (closeTime.startsWith("vents")) {
      check = check.with("    stale-after: 60 s\n    vents: roof\n", "    stale-after: 60 s\n");
    }
    assertThat(storm(check)).isEqualTo(expected(reported));
  }

  @Test
  void aSlowerClosingIsMarkedWhereItWasSeen() {
    LineCheck check =
        proved("10 min", "close-time: 90 s", "{unit: Bay 3, limit: 12 m/s, closed-in: 91 s}");
    assertThat(check.marked(LATE)).isEqualTo("91 s");
    assertThat(check.reportedBy(LATE).get(0))
        .contains("the vents of \"Bay 3\" took 91 s to close; close-time is 90 s");
    LineCheck without = check.with(", close-within: 10 min", "");
    assertThat(storm(without)).containsExactly("error " + LATE);
  }

  /** The newer record counts, whatever their order. */
  @ParameterizedTest
  @CsvSource({"2020-05-01, 60 s, ''", "2020-05-01, 95 s, error", "2019-05-01, 95 s, ''"})
  void aRenewedRecordCounts(String date, String closedIn, String level) {
    LineCheck check =
        proved("10 min", "close-time: 90 s", "{unit: Bay 3, limit: 12 m/s, closed-in: 85 s}");
    LineCheck renewed =
        check.with(
            "closed-in: 85 s}]}",
            "closed-in: 85 s}], renewed: [{date: "
                + date
                + ", by: R.O., storm-response-seen: [{unit: Bay 3, limit: 12 m/s, closed-in: "
                + closedIn
                + "}]}]}");
    assertThat(storm(renewed)).isEqualTo(level.isEmpty() ? List.of() : List.of("error " + LATE));
  }

  /** On a line that is planned anew, the record is of another one. */
  @Test
  void aRecordOfAnotherLineShortensNothing() {
    LineCheck check =
        proved("155.04 s", "close-time: 90 s", "{unit: Bay 3, limit: 12 m/s, closed-in: 85 s}");
    assertThat(storm(check)).isEmpty();
    assertThat(storm(check.with("stage: commissioned", "stage: planned")))
        .containsExactly("error " + LATE);
  }

  /** 0.038 + stale-after; three periods are 15 s. */
  @ParameterizedTest
  @CsvSource({
    "maximum-age: 60.04 s, 60 s, ''",
    "maximum-age: 60.03 s, 60 s, error " + STALE,
    "maximum-age: 60 s, 15 s, ''",
    "maximum-age: 60 s, 14.9 s, warning " + STALE,
    "averaging: 10 s, 15 s, ''",
    "averaging: 10 s, 14.9 s, warning " + STALE,
    "averaging: 10 s, 10 min, ''",
    // Then the sum to closed vents judges it.
    "'maximum-age: 30 s, averaging: 10 s, close-within: 160.04 s', 60 s, ''",
    "'maximum-age: 30 s, averaging: 10 s, close-within: 160.03 s', 60 s, error " + LATE
  })
  void theStaleTime(String station, String staleAfter, String reported) {
    LineCheck check = of(station, HEAD, CLOSING.replace("60 s", staleAfter));
    assertThat(check.reported()).isEqualTo(expected(reported));
    if (reported.endsWith(STALE)) {
      assertThat(check.marked(STALE)).isEqualTo(staleAfter);
      Matcher offered = STALE_AFTER.matcher(check.results().get(0).message().remedy());
      assertThat(offered.find()).isTrue();
      assertThat(
              check
                  .with("stale-after: " + staleAfter, "stale-after: " + offered.group(1))
                  .reported())
          .isEmpty();
    }
  }

  /** No time is long enough for the broadcast and short enough for the site. */
  @Test
  void whereNoStaleTimeDoesTheBroadcastHasToChange() {
    LineCheck check = of("maximum-age: 12 s", HEAD, CLOSING);
    assertThat(check.reported()).containsExactly("error " + STALE);
    assertThat(check.results().get(0).message().remedy()).startsWith("broadcast more often");
    assertThat(check.results().get(0).fix()).isNull();
  }

  private static final Pattern EVERY = Pattern.compile("every: ([0-9.]+ s)");

  /**
   * Three periods would be more than the site allows: 3 · 14 s are over 30 s, and 10 + 0.038 + 60 +
   * 90 s over 150 s.
   */
  @ParameterizedTest
  @CsvSource({
    "maximum-age: 30 s, 14 s, 25 s, maximum-age",
    "'averaging: 10 s, close-within: 150 s', 20 s, 40 s, close-within"
  })
  void whereNoLongerWaitDoesTheBroadcastHasToComeMoreOften(
      String station, String every, String staleAfter, String limit) {
    LineCheck check =
        of(station, HEAD, CLOSING.replace("60 s", staleAfter))
            .with("every: 5 s", "every: " + every);
    assertThat(check.reported()).containsExactly("warning " + STALE);
    Result result = check.results().get(0);
    assertThat(result.message().remedy())
        .endsWith("or agree on a longer " + limit + ", which a longer stale-after needs");
    assertThat(result.fix()).isNull();
    Matcher offered = EVERY.matcher(result.message().remedy());
    assertThat(offered.find()).as(result.message().remedy()).isTrue();
    assertThat(check.with("every: " + every, "every: " + offered.group(1)).reported()).isEmpty();
  }

  /**
   * One slow broadcast makes the reading too old and the wait too short: one result, and its remedy
   * mends both.
   */
  @Test
  void aSlowBroadcastIsToldOnce() {
    LineCheck check = of(STORM + "200 s", HEAD, CLOSING).with("every: 5 s", "every: 60 s");
    assertThat(check.reported()).containsExactly("error " + LATE);
    Matcher offered = EVERY.matcher(check.results().get(0).message().remedy());
    assertThat(offered.find()).isTrue();
    assertThat(check.with("every: 60 s", "every: " + offered.group(1)).reported()).isEmpty();
  }

  @Test
  void theStaleTimeAloneMayBeTooLong() {
    LineCheck check = of("maximum-age: 30 s", HEAD, CLOSING);
    LineCheck quiet = check.with("  traffic: {broadcast: {registers: 12, every: 5 s}}\n", "");
    assertThat(quiet.rules()).containsExactlyInAnyOrder(STALE, UNKNOWN);
  }

  @Test
  void unitsWithoutVentsMayWaitAsTheyLike() {
    assertThat(of("maximum-age: 30 s", HEAD, "vents: none\n    stale-after: 10 min").reported())
        .isEmpty();
    assertThat(of("maximum-age: 30 s", HEAD + "\n    stale-after: 1 s", "vents: none").reported())
        .isEmpty();
  }

  private static final String BROADCAST = "  traffic: {broadcast: {registers: 12, every: 5 s}}\n";

  /** What is taken out is named, once for the site. */
  @ParameterizedTest
  @CsvSource({
    "', averaging: 10 s', lacks a setting that decides, averaging of the station",
    "'    close-time: 20 s\n', lacks a setting that decides, close-time of \"Head House\"",
    "'    close-time: 90 s\n', lacks a setting that decides, close-time of \"Bay 3\"",
    "'    stale-after: 60 s\n', lacks a setting that decides, stale-after of \"Bay 3\"",
    "'" + BROADCAST + "', lacks a setting that decides, the broadcast of the line's traffic",
    "', polling: {every: 20 s, registers: 60}', lacks a setting that decides, the polling of the supervision",
  })
  void whatIsMissingForTheClosingIsNamed(String text, String count, String named) {
    SiteText site =
        new SiteText()
            .station("[light, wind-speed], averaging: 10 s, close-within: 3 min")
            .broadcast(12, "5 s")
            .unit("120 ohm", "10 m", HEAD)
            .unit("none", "10 m", "vents: none")
            .unit("120 ohm", "", CLOSING)
            .polls("serial", "every: 20 s, registers: 60");
    LineCheck whole = LineCheck.of(site);
    assertThat(whole.reported()).isEmpty();
    LineCheck check = whole.with(text, "");
    assertThat(check.reported()).containsExactly("warning " + UNKNOWN);
    assertThat(check.marked(UNKNOWN)).isEqualTo("3 min");
    assertThat(check.reportedBy(UNKNOWN).get(0)).contains(count).contains("set " + named);
  }

  /** No vent closes on wind that nobody measures. */
  @Test
  void aStationWithoutWindIsNamed() {
    LineCheck check =
        of(STORM + "3 min", HEAD, CLOSING)
            .with(", wind-speed],", "],")
            .with(", wind-speed: local", "")
            .with(", wind-speed: head", "");
    assertThat(check.reported()).containsExactly("warning " + UNKNOWN);
    assertThat(check.reportedBy(UNKNOWN).get(0))
        .contains("set wind-speed among the readings of the station");
  }

  @Test
  void allThatIsMissingIsNamedAtOnce() {
    LineCheck check =
        of(
            "maximum-age: 70 s, close-within: 3 min",
            "vents: roof\n    on-stale-readings: close",
            "vents: side\n    on-stale-readings: close");
    assertThat(check.reported()).containsExactly("warning " + UNKNOWN);
    assertThat(check.with(BROADCAST, "").reportedBy(UNKNOWN).get(0))
        .contains("lacks 5 settings that decide whether the vents close in time")
        .contains(
            "set averaging of the station; the broadcast of the line's traffic;"
                + " close-time of \"Head House\", \"Bay 3\"; stale-after of \"Bay 3\"");
  }

  /** The age alone needs neither averaging nor closing. */
  @ParameterizedTest
  @CsvSource({
    "'    close-time: 90 s\n', ''",
    "'    close-time: 20 s\n', ''",
    "'    stale-after: 60 s\n', stale-after of \"Bay 3\"",
    "'" + BROADCAST + "', the broadcast of the line's traffic"
  })
  void whatIsMissingForTheAgeIsNamed(String text, String named) {
    LineCheck check = of("maximum-age: 70 s", HEAD, CLOSING).with(text, "");
    assertThat(check.rules()).isEqualTo(named.isEmpty() ? List.of() : List.of(UNKNOWN));
    if (!named.isEmpty()) {
      assertThat(check.marked(UNKNOWN)).isEqualTo("70 s");
      assertThat(check.reportedBy(UNKNOWN).get(0)).contains("set " + named);
    }
  }

  /** Without a limit nothing is asked; a faulty value is reported already. */
  @ParameterizedTest
  @CsvSource({
    "close-within: 3 min, averaging: 5 s",
    "close-within: 3 min, close-within: soon",
    "registers: 12, registers: 0",
    "close-time: 90 s, close-time: slow",
    "stale-after: 60 s, stale-after: 60"
  })
  void staysSilent(String text, String other) {
    LineCheck check =
        of("close-within: 3 min", HEAD, CLOSING)
            .with("close-within", "averaging: 10 s, close-within");
    LineCheck changed =
        text.startsWith("close-within") && other.startsWith("averaging")
            ? check.with(", close-within: 3 min", "")
            : check.with(text, other);
    assertThat(changed.rules()).doesNotContain(UNKNOWN, LATE);
  }

  /** Somebody asks for closed vents, and no unit says that it has any. */
  @Test
  void ventsThatNobodyWritesAreNamed() {
    LineCheck check =
        of("averaging: 10 s, close-within: 3 min", "network: {ip: 192.168.1.2/24}", "vents: none");
    assertThat(check.reportedBy(UNKNOWN))
        .singleElement()
        .asString()
        .contains("set vents of \"Head House\"");
  }

  /** Once commissioned, leaving out is no way round. */
  @Test
  void aCommissionedUnitThatSaysNothingOfVentsCountsAsHavingSome() {
    LineCheck check = proved("10 min", "close-time: 90 s", "Bay 3").with("    vents: none\n", "");
    assertThat(check.reportedBy(UNKNOWN))
        .singleElement()
        .asString()
        .contains("close-time of \"Bay 2\"; stale-after of \"Bay 2\"");
    assertThat(storm(check.with("stage: commissioned", "stage: planned"))).isEmpty();
  }

  /** The longest other transaction counts, whoever asks: 10 + 0.038 + 0.329 + 60 + 90 s. */
  @ParameterizedTest
  @CsvSource({"162.06 s, ''", "162.05 s, error " + LATE})
  void aPieceOfEquipmentThatIsSilentCounts(String within, String reported) {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .station("[light, wind-speed], " + STORM + within)
                .broadcast(12, "5 s")
                .unit("120 ohm", "10 m", HEAD)
                .equipment("Dosing Rig", "by: head, registers: 4, every: 1 min", "10 m")
                .unit("120 ohm", "", CLOSING));
    // 2 · (1 s + 8 characters) = 2.0183 s
    assertThat(check.reported()).isEqualTo(expected(reported));
  }
}
