package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A rule that lacks what it needs is silent: what is missing is reported by itself, and nothing
 * else.
 */
class MissingSettingsTest {
  private static final LineCheck SITE =
      LineCheck.of(
              new SiteText()
                  .line("cable", SiteText.cable("26 AWG", "70 ohm").replace("true", "false"))
                  .line("stop-bits", "2")
                  .unit("120 ohm", "10 m", "device-type: box", "pair: crossed")
                  .unit("none", "10 m", "device-type: box", "stub: 30 m")
                  .unit("120 ohm", "", "device-type: box"))
          .types("id: box, unit-load: 1/8, baud-rates: [19200], rise-time: 100 ns");

  private static List<String> rules(String text, String other) {
    return SITE.with(text, other).rules().stream()
        .filter(rule -> !rule.startsWith("schema."))
        .distinct()
        .sorted()
        .toList();
  }

  @Test
  void allIsReported() {
    assertThat(SITE.rules().stream().distinct().sorted())
        .containsExactly(
            "cable.too-thin",
            "cable.unshielded",
            "conductors.polarity",
            "serial.framing",
            "serial.unsupported",
            "stub.too-long",
            "termination.mismatch");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "line:                  | lines:                  | conductors.polarity, stub.too-long",
        "cable: {               | cables: {               | conductors.polarity, serial.framing, serial.unsupported, stub.too-long",
        "gauge: 26 AWG, shielded| shielded                | cable.unshielded, conductors.polarity, serial.framing, serial.unsupported, stub.too-long, termination.mismatch",
        "impedance: 70 ohm      | impedance: 0 ohm        | cable.too-thin, cable.unshielded, conductors.polarity, serial.framing, serial.unsupported, stub.too-long",
        "parity: even           | parity: mark            | cable.too-thin, cable.unshielded, conductors.polarity, serial.unsupported, stub.too-long, termination.mismatch",
        "stop-bits: 2           | stop-bit: 2             | cable.too-thin, cable.unshielded, conductors.polarity, serial.unsupported, stub.too-long, termination.mismatch",
        "baud: 9600             | baud: fast              | cable.too-thin, cable.unshielded, conductors.polarity, serial.framing, stub.too-long, termination.mismatch",
        "role: head             | role: follower          | cable.too-thin, cable.unshielded, head.missing, serial.framing, serial.unsupported, stub.too-long, termination.mismatch",
        "stub: 30 m             | stub: long              | cable.too-thin, cable.unshielded, conductors.polarity, serial.framing, serial.unsupported, termination.mismatch",
      })
  void whatIsLeft(String text, String other, String rules) {
    assertThat(rules(text, other)).containsExactly(rules.split(", ", -1));
  }
}
