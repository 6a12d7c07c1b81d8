package org.headhouse.linter;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.IdleBias;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Equipment, converters and repeaters on the chain: electrical items, and no units. */
class ItemsBesideUnitsTest {
  private static final String LINE =
      """
      format: 1
      site: example
      stage: planned
      weather-station: {at: Propagation, readings: [wind-speed]}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm, velocity-factor: 0.66, capacitance: 52 pF}
        bias:
          - {at: Propagation, resistors: 560 ohm, supply: 5 V}
          - {at: East Boiler Room, side: out, resistors: 560 ohm, supply: 5 V, tolerance: 1 %}
      chain:
        - converter: Office
          latency: 16 ms
          unit-load: 1/8
          termination: 120 ohm
          cable-to-next: 12 m
        - unit: Propagation
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: none
          outdoor: {wind-speed: local}
          cable-to-next: 42 m
        - equipment: Dosing Rig
          address: 2
          broadcasts: ignored
          polled: {by: supervision, registers: 4, every: 1 min}
          unit-load: 1/2
          idle-bias: needed
          isolated: false
          termination: none
          stub: 0.5 m
          cable-to-next: 20 m
        - unit: Seedling North
          role: follower
          address: 3
          comm-module: fitted
          conductors: [A, B]
          termination: none
          outdoor: {wind-speed: head}
          cable-to-next: 20 m
        - repeater: East Boiler Room
          unit-load: {in: 1/4, out: 1/8}
          idle-bias: {in: needed}
          isolated: true
          termination: {in: 120 ohm, out: 120 ohm}
          cable-to-next: 30 m
        - unit: Hardening Bay
          role: follower
          address: 4
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: {wind-speed: head}
          cable-to-next: none
      supervision:
        link: serial
        at: Office
        zones: [Propagation, Seedling North, Hardening Bay]
        polling: {every: 20 s, registers: 60, timeout: 1 s, retries: 1}
      """;

  private static Site site(String text) {
    return requireNonNull(
        new SiteReader(DeviceTypes.NONE, Limits.DEFAULT)
            .read("example.yaml", text.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<SegmentLine> segments(String text) {
    return new LineFigures(site(text), SitePolicy.DEFAULT).segments();
  }

  /** Addresses pass over that of the equipment, the converter may stand before the head unit. */
  @Test
  void aSoundLineHasNoResult() {
    assertThat(Checks.lines(LINE)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "    address: 3|    address: 2|address 2 is used twice|[address.duplicate]",
        "    address: 2|    address: 3|address 3 is used twice|[address.duplicate]",
        "    address: 2|    address: 9|no unit has address 2|[address.gap]",
        "  at: Office|  at: Ofice|there is no converter \"Ofice\"|[reference.unknown]",
        "  at: Office|  at: Dosing Rig|there is no converter \"Dosing Rig\"|[reference.unknown]",
        "equipment: Dosing Rig|equipment: Office|the name \"Office\" is used twice|[name.duplicate]",
        "zones: .Propagation|zones: [Dosing Rig, Propagation|the zone \"Dosing Rig\" is not a unit but equipment|[supervision.zone-unknown]",
        "zones: .Propagation|zones: [Office, Propagation|the zone \"Office\" is not a unit but a converter|[supervision.zone-unknown]",
        "zones: .Propagation|zones: [East Boiler Room, Propagation|not a unit but a repeater: a zone shows the readings and alarms of a unit; delete the zone|[supervision.zone-unknown]",
        "    idle-bias: needed|    device-type: rig|||",
        "  cable-to-next: 20 m|  cable-to-next: none|the cable length after|[cable.length-unknown]",
        "    termination: none\\n    stub|    stub|the file does not say whether \"Dosing Rig\"|[termination.undeclared]",
        "    termination: none\\n    stub|    termination: 120 ohm\\n    stub|\"Dosing Rig\" has a 120 ohm terminator but|[termination.mid-line]",
        "    stub: 0.5 m|    stub: 21 m|\"Dosing Rig\" is on a 21 m stub|[stub.too-long]"
      })
  void oneMistakeGivesOneResult(String text, String other, String fact, String rule) {
    String old = text.replace("\\n", "\n");
    assertThat(LINE).containsPattern(old);
    List<String> lines = Checks.lines(LINE.replaceFirst(old, other.replace("\\n", "\n")));
    if (rule == null) {
      assertThat(lines).isEmpty();
    } else {
      assertThat(lines).singleElement().asString().contains(fact).endsWith(rule);
    }
  }

  @Test
  void whatItemsSayOfTheirLoadCounts() {
    List<SegmentLine> segments = segments(LINE);
    assertThat(segments).hasSize(2);
    assertThat(segments.get(0).unitLoads()).isCloseTo(0.125 + 1 + 0.5 + 1 + 0.25, within(1e-9));
    assertThat(segments.get(1).unitLoads()).isCloseTo(0.125 + 1, within(1e-9));
    assertThat(segments.get(0).lengthMetres()).isEqualTo(94);
  }

  @Test
  void biasAtARepeaterIsOnTheSideThatIsWritten() {
    assertThat(segments(LINE).get(1).biases()).hasSize(1);
    List<SegmentLine> in = segments(LINE.replace("side: out", "side: in"));
    assertThat(in.get(0).biases()).hasSize(2);
    assertThat(in.get(1).biases()).isEmpty();
  }

  @Test
  void sidesOfARepeaterSayWhatTheyNeed() {
    Site site = site(LINE);
    ChainItem repeater = site.segments().get(1).first();
    assertThat(repeater.idleBias(site.segments().get(0).side(repeater)).is(IdleBias.NEEDED))
        .isTrue();
    assertThat(repeater.idleBias(site.segments().get(1).side(repeater)).isMissing()).isTrue();
    assertThat(repeater.isolated().is(true)).isTrue();
    assertThat(site.items().get(2).isolated().is(false)).isTrue();
    assertThat(site.addressesOfEquipment()).containsExactly(2);
  }
}
