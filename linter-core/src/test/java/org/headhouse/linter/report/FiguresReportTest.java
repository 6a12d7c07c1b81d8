package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.Checks;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.figures.AcceptedFigures;
import org.headhouse.linter.figures.EdgeFigures;
import org.headhouse.linter.figures.SegmentSummary;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.figures.WorstFigures;
import org.headhouse.linter.line.PairResistance;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.TrafficFigures;
import org.junit.jupiter.api.Test;

class FiguresReportTest {
  private static final String WHOLE =
      new SiteText()
          .bias("Head House", "560 ohm", "5 V")
          .broadcast(12, "5 s")
          .unit("120 ohm", "100 ft")
          .unit("none", "70.7 m")
          .repeater("Boiler", "120 ohm", "33.3 m")
          .unit("120 ohm", "")
          .polls("serial", "every: 20 s, registers: 60")
          .toString();

  private static String written(SiteFigures... sites) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (FiguresReport report = new FiguresReport(out)) {
      Stream.of(sites).forEach(report::add);
    }
    return out.toString(UTF_8);
  }

  private static JsonNode parsed(SiteFigures... sites) {
    return JsonText.read(written(sites));
  }

  /** The keys and their order, whatever the numbers. */
  @Test
  void shape() {
    String text = written(LineCheck.of(WHOLE).figures());
    assertThat(text.replaceAll("-?[0-9.]+(E-?[0-9]+)?(?=,?\n)", "0").replaceAll("\\s+", ""))
        .isEqualTo(
            """
            {"sites":[{"site":"example","segments":[
            {"items":["HeadHouse","Bay2","Boiler"],"lengthMetres":0,"loopResistanceOhms":0,
            "unitLoads":0,"idleVolts":{"HeadHouse":0,"Bay2":0,"Boiler":0},
            "weakestReceived":{"from":"Boiler","to":"HeadHouse","volts":0},
            "pairResistanceOhms":{"low":0,"high":0},
            "driverLoadOhms":{"HeadHouse":0,"Bay2":0,"Boiler":0},
            "worst":{"idleVolts":{"HeadHouse":0,"Bay2":0,"Boiler":0},
            "weakestReceived":{"from":"Boiler","to":"HeadHouse","volts":0}},
            "accepted":{"pairResistanceOhms":{"HeadHouse":{"low":0,"high":0},
            "Bay2":{"low":0,"high":0},"Boiler":{"low":0,"high":0}},
            "idleVolts":{"HeadHouse":{"low":0,"high":0},"Bay2":{"low":0,"high":0},
            "Boiler":{"low":0,"high":0}}},
            "settling":{"settledMicros":0,"from":"HeadHouse","to":"Boiler","bitMicros":0},
            "capacitorTerminators":[]},
            {"items":["Boiler","Bay3"],"lengthMetres":0,"loopResistanceOhms":0,
            "unitLoads":0,"idleVolts":null,
            "weakestReceived":{"from":"Boiler","to":"Bay3","volts":0},
            "pairResistanceOhms":{"low":0,"high":0},
            "driverLoadOhms":{"Boiler":0,"Bay3":0},
            "worst":{"idleVolts":null,"weakestReceived":{"from":"Boiler","to":"Bay3","volts":0}},
            "accepted":{"pairResistanceOhms":{"Boiler":{"low":0,"high":0},
            "Bay3":{"low":0,"high":0}},"idleVolts":null},
            "settling":{"settledMicros":0,"from":"Boiler","to":"Bay3","bitMicros":0},
            "capacitorTerminators":[]}],
            "traffic":{"characterMillis":0,"broadcastMillis":0,"pollMillis":0,"utilisation":0,
            "worstAgeMillis":0,"worstAgeOneSilentMillis":0,"lostBroadcasts":0,
            "readingAge":{"periodsMillis":0,"otherMillis":0,"broadcastMillis":0,"totalMillis":0},
            "readingAgeOneSilent":{"periodsMillis":0,"otherMillis":0,"broadcastMillis":0,
            "totalMillis":0}},
            "storm":null}]}
            """
                .replaceAll("\\s+", ""));
    assertThat(text).endsWith("}\n");
  }

  /** What is written and what was computed are the same to the last bit. */
  @Test
  void fullPrecision() {
    SiteFigures site = LineCheck.of(WHOLE).figures();
    List<Double> expected = new ArrayList<>();
    for (SegmentSummary segment : site.segments()) {
      SegmentFigures figures = requireNonNull(segment.figures());
      expected.add(requireNonNull(segment.lengthMetres()));
      expected.add(figures.loopResistanceOhms());
      expected.add(segment.unitLoads());
      if (figures.idleVolts() != null) {
        expected.addAll(figures.idleVolts());
      }
      if (figures.weakestReceived() != null) {
        expected.add(figures.weakestReceived().volts());
      }
      expected.add(figures.pairResistance().lowOhms());
      expected.add(figures.pairResistance().highOhms());
      expected.addAll(requireNonNull(segment.driverLoadOhms()));
      WorstFigures worst = requireNonNull(segment.worst());
      if (worst.idleVolts() != null) {
        expected.addAll(worst.idleVolts());
      }
      if (worst.weakestReceived() != null) {
        expected.add(worst.weakestReceived().volts());
      }
      AcceptedFigures accepted = requireNonNull(segment.accepted());
      Stream.of(accepted.pairOhms(), accepted.idleVolts())
          .filter(Objects::nonNull)
          .flatMap(List::stream)
          .forEach(range -> expected.addAll(List.of(range.low(), range.high())));
      EdgeFigures edges = requireNonNull(segment.edges());
      expected.add(edges.settledSeconds() * 1e6);
      expected.add(requireNonNull(edges.bitSeconds()) * 1e6);
    }
    TrafficFigures traffic = requireNonNull(site.traffic());
    expected.add(traffic.characterSeconds() * 1e3);
    expected.add(requireNonNull(traffic.broadcastSeconds()) * 1e3);
    expected.add(requireNonNull(traffic.pollSeconds()) * 1e3);
    expected.add(traffic.utilisation());
    expected.add(requireNonNull(traffic.worstAgeSeconds()) * 1e3);
    expected.add(requireNonNull(traffic.worstAgeOneSilentSeconds()) * 1e3);
    expected.add((double) traffic.lostBroadcasts());
    for (ReadingAge age :
        List.of(requireNonNull(traffic.age()), requireNonNull(traffic.ageOneSilent()))) {
      expected.add(age.periodsSeconds() * 1e3);
      expected.add(age.otherSeconds() * 1e3);
      expected.add(age.frameSeconds() * 1e3);
      expected.add(age.totalSeconds() * 1e3);
    }
    List<Double> found =
        Pattern.compile(": (-?[0-9.]+(?:E-?[0-9]+)?)(?=[,\\s])")
            .matcher(written(site))
            .results()
            .map(MatchResult::group)
            .map(text -> Double.parseDouble(text.substring(2)))
            .toList();
    assertThat(found).isEqualTo(expected).hasSize(60);
  }

  /**
   * Computed by hand: 2 · 5 s and the longest poll; a silent unit takes 2 · (1 s + 8 characters).
   */
  @Test
  void theStormIsToldByItsParts() {
    JsonNode storm = parsed(LineCheck.of(STORM).figures()).get("sites").get(0).get("storm");
    assertThat(storm.toString().replace(" ", "").replaceAll("(\\.\\d\\d\\d)\\d+", "$1"))
        .isEqualTo(
            """
            {"closeWithinMillis":180000.0,"units":[
            {"unit":"Head House","averagingMillis":10000.0,"readingAgeMillis":null,
            "deadLineMillis":null,"closingMillis":90000.0,"totalMillis":100000.0},
            {"unit":"Bay 2","averagingMillis":10000.0,"readingAgeMillis":12056.145,
            "deadLineMillis":62056.145,"closingMillis":90000.0,
            "totalMillis":162056.145},
            {"unit":"Bay 3","averagingMillis":10000.0,"readingAgeMillis":12056.145,
            "deadLineMillis":null,"closingMillis":null,"totalMillis":null}]}
            """
                .replaceAll("[ \n]", ""));
  }

  private static final String STORM =
      new SiteText()
          .station("[light, wind-speed], averaging: 10 s, close-within: 3 min")
          .broadcast(12, "5 s")
          .unit("120 ohm", "10 m", "vents: roof", "close-time: 90 s")
          .unit(
              "none",
              "10 m",
              "vents: roof",
              "on-stale-readings: close",
              "stale-after: 60 s",
              "close-time: 90 s")
          .unit("120 ohm", "", "vents: roof", "on-stale-readings: hold")
          .polls("serial", "every: 20 s, registers: 60")
          .toString();

  @Test
  void whatIsNotKnownIsNull() {
    JsonNode site =
        parsed(LineCheck.of(WHOLE).with("70.7 m", "far").with("baud: 9600", "baud: 1").figures())
            .at("/sites/0");
    assertThat(site.get("traffic").isNull()).isTrue();
    JsonNode segment = site.at("/segments/0");
    assertThat(segment.get("items")).hasSize(3);
    assertThat(segment.get("unitLoads").asDouble()).isEqualTo(3);
    assertThat(
            List.of(
                "lengthMetres",
                "loopResistanceOhms",
                "idleVolts",
                "weakestReceived",
                "pairResistanceOhms",
                "driverLoadOhms",
                "worst",
                "accepted"))
        .allSatisfy(
            key -> {
              assertThat(segment.has(key)).as(key).isTrue();
              assertThat(segment.get(key).isNull()).as(key).isTrue();
            });
    assertThat(site.at("/segments/1/pairResistanceOhms/high").isNumber()).isTrue();
  }

  /** 120 ohm · 1 nF; a bit of 9600 bit/s; 2 · 300 m at 0.66 of the speed of light (computed). */
  @Test
  void theTimesOfACapacitorStandBesideBitAndRoundTrip() {
    SiteText text = new SiteText().unit("120 ohm + 1 nF", "300 m").unit("120 ohm", "");
    JsonNode terminators =
        parsed(LineCheck.of(text).figures()).at("/sites/0/segments/0/capacitorTerminators");
    assertThat(terminators).hasSize(1);
    JsonNode one = terminators.get(0);
    assertThat(one.get("at").asText()).isEqualTo("Head House");
    assertThat(one.get("timeConstantMicros").asDouble()).isCloseTo(0.12, within(1e-9));
    assertThat(one.get("bitMicros").asDouble()).isCloseTo(104.1667, within(1e-4));
    assertThat(one.get("roundTripMicros").asDouble()).isCloseTo(3.0324, within(1e-4));
  }

  /** Without polls there are no times of polls; without a broadcast no ages. */
  @Test
  void partsOfTheTraffic() {
    JsonNode broadcast =
        parsed(LineCheck.of(WHOLE).with("link: serial", "link: ethernet").figures())
            .at("/sites/0/traffic");
    assertThat(broadcast.get("pollMillis").isNull()).isTrue();
    assertThat(broadcast.get("worstAgeMillis").isNumber()).isTrue();
    JsonNode polls =
        parsed(
                LineCheck.of(WHOLE)
                    .with("  traffic: {broadcast: {registers: 12, every: 5 s}}\n", "")
                    .figures())
            .at("/sites/0/traffic");
    assertThat(polls.get("broadcastMillis").isNull()).isTrue();
    assertThat(polls.get("worstAgeMillis").isNull()).isTrue();
    assertThat(polls.get("worstAgeOneSilentMillis").isNull()).isTrue();
    assertThat(polls.get("pollMillis").isNumber()).isTrue();
  }

  /**
   * Where no terminator passes direct current, no resistance is judged; without bias no voltage.
   */
  @Test
  void whatIsNotJudgedHasNoRange() {
    LineCheck open = LineCheck.of(WHOLE).with("120 ohm", "120 ohm + 1 nF");
    JsonNode accepted = parsed(open.figures()).at("/sites/0/segments/0/accepted");
    assertThat(accepted.get("pairResistanceOhms").isNull()).isTrue();
    assertThat(accepted.at("/idleVolts/Bay 2/high").isNumber()).isTrue();
    assertThat(parsed(open.figures()).at("/sites/0/segments/1/accepted/idleVolts").isNull())
        .isTrue();
  }

  /** JSON has no word for infinity (RFC 8259 §6). */
  @Test
  void anOpenPairIsNull() {
    SiteFigures open = LineCheck.of(WHOLE).with("120 ohm", "120 ohm + 1 nF").figures();
    PairResistance pair = requireNonNull(open.segments().get(0).figures()).pairResistance();
    assertThat(pair.highOhms()).isInfinite();
    JsonNode written = parsed(open).at("/sites/0/segments/0/pairResistanceOhms");
    assertThat(written.get("high").isNull()).isTrue();
    assertThat(written.get("low").asDouble()).isEqualTo(pair.lowOhms());
  }

  private static final String HOSTILE = "\"},\\ \u0000\u001b\u2028</script>\uD83C\uDF3F\u202E";

  @Test
  void namesAreEscaped() {
    SegmentSummary segment =
        new SegmentSummary(
            List.of(HOSTILE, HOSTILE), 1.0, 2, null, null, null, null, null, List.of());
    SiteFigures site = new SiteFigures(HOSTILE, List.of(segment), null, null);
    JsonNode parsed = parsed(site);
    assertThat(parsed.at("/sites/0/site").asText()).isEqualTo(HOSTILE);
    assertThat(parsed.at("/sites/0/segments/0/items/1").asText()).isEqualTo(HOSTILE);
    assertThat(written(site)).doesNotContain("\u0000", "\u001b").contains("\\u0000");
  }

  /** An object has each key once (RFC 8259 §4); a lone half of a pair is no character. */
  @Test
  void namesThatAreDoubledOrBroken() {
    LineCheck twice = LineCheck.of(WHOLE).with("Bay 2", "Head House");
    JsonNode volts = parsed(twice.figures()).at("/sites/0/segments/0/idleVolts");
    assertThat(JsonText.keys(volts)).containsExactly("Head House", "Boiler");
    SiteFigures broken = new SiteFigures("half \uD83C", List.of(), null, null);
    assertThat(parsed(broken).at("/sites/0/segments")).isEmpty();
  }

  @Test
  void noSiteAtAll() {
    assertThat(parsed()).isEqualTo(JsonText.read("{\"sites\": []}"));
  }

  /** The stream belongs to whoever opened it. */
  @Test
  void theStreamIsLeftOpen() {
    List<String> closed = new ArrayList<>();
    ByteArrayOutputStream out =
        new ByteArrayOutputStream() {
          @Override
          public void close() {
            closed.add("closed");
          }
        };
    new FiguresReport(out).close();
    assertThat(closed).isEmpty();
    assertThat(out.toString(UTF_8)).endsWith("}\n");
  }

  /** However many sites there are, those before are out of memory when one is read. */
  @Test
  void aSiteIsWrittenBeforeTheNextButOneIsRead() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<Integer> sizes = new ArrayList<>();
    String padded = WHOLE.replace("site: example", "site: " + "x".repeat(60));
    Stream<SiteInput> inputs =
        Stream.generate(
                () ->
                    new SiteInput(
                        "example.yaml",
                        most -> {
                          sizes.add(out.size());
                          return padded.getBytes(UTF_8);
                        }))
            .limit(100);
    try (FiguresReport report = new FiguresReport(out)) {
      assertThat(Checks.linter().figures(inputs, report::add)).isEmpty();
    }
    int one = out.size() / 100;
    assertThat(sizes).hasSize(100).isSorted();
    for (int i = 0; i < 100; i++) {
      // The writer's buffer of a few kilobytes may lag behind.
      assertThat(sizes.get(i)).as("before site %d", i).isGreaterThan(i * one - 20_000);
    }
    assertThat(sizes.get(99)).isGreaterThan(50 * one);
  }
}
