package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One value written in two ways. A foot is 0.3048 m exactly (international yard and pound agreement
 * of 1959, from memory); degrees Fahrenheit are 9/5 of those Celsius and 32.
 */
class SameMeaningTest {
  private static final String SITE =
      """
      format: 1
      site: example
      weather-station: {at: Head House, readings: [light, rain], maximum-age: 60 s}
      line:
        baud: 9600
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        bias: [{at: Head House, resistors: 560 ohm, supply: 5 V}]
        traffic: {broadcast: {registers: 12, every: 5 s}}
      chain:
        - {unit: Head House, role: head, address: 1, termination: 120 ohm + 1 nF, conductors: [A, B], stub: 10 ft}
      """;

  private static List<Difference> differences(String text, String other) {
    assertThat(SITE).contains(text);
    return SiteDifferences.between(States.site(SITE), States.site(SITE.replace(text, other)));
  }

  @ParameterizedTest
  @CsvSource({
    "stub: 10 ft, stub: 3.048 m",
    "stub: 10 ft, stub: 10.0 ft",
    "impedance: 120 ohm, impedance: 0.12 kohm",
    "120 ohm + 1 nF, 0.12 kohm + 1000 pF",
    "maximum-age: 60 s, maximum-age: 1 min",
    "every: 5 s, every: 5000 ms",
    "gauge: 24 AWG, gauge: 24  AWG",
    "'[light, rain]', '[rain, light]'",
    "'[A, B]', '[B, A]'",
    "registers: 12, registers: 0x0C",
  })
  void isNoDifference(String text, String other) {
    assertThat(differences(text, other)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "stub: 10 ft, stub: 3.049 m",
    "impedance: 120 ohm, impedance: 121 ohm",
    "120 ohm + 1 nF, 120 ohm + 2 nF",
    "120 ohm + 1 nF, 120 ohm",
    "120 ohm + 1 nF, 100 ohm + 1 nF",
    "120 ohm + 1 nF, none",
    "resistors: 560 ohm, resistors: 470 ohm",
    "supply: 5 V, supply: 5.1 V",
    "maximum-age: 60 s, maximum-age: 60 ms",
    "every: 5 s, every: 5 min",
    "gauge: 24 AWG, gauge: 22 AWG",
    // Both are 0.205 mm2 thick, but one is sold by its number.
    "gauge: 24 AWG, gauge: 0.205 mm2",
    "'[light, rain]', '[light]'",
    "registers: 12, registers: 13",
    "shielded: true, shielded: false",
  })
  void isOne(String text, String other) {
    assertThat(differences(text, other)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "gauge: 24 AWG, gauge: 0.2 mm2, gauge: 0.20 mm2, gauge: 0.5 mm2",
  })
  void anAreaIsItsNumber(String gauge, String area, String same, String other) {
    String bySize = SITE.replace(gauge, area);
    assertThat(
            SiteDifferences.between(States.site(bySize), States.site(bySize.replace(area, same))))
        .isEmpty();
    assertThat(
            SiteDifferences.between(States.site(bySize), States.site(bySize.replace(area, other))))
        .hasSize(1);
  }

  /** What is not understood may mean the same. */
  @ParameterizedTest
  @CsvSource({
    "stub: 10 ft, stub: 10",
    "gauge: 24 AWG, gauge: thick",
    "address: 1, address: one",
    "role: head, role: haed",
    "registers: 12, registers: many",
    "'conductors: [A, B]', 'conductors: A'",
  })
  void whatIsNotUnderstoodIsNoDifference(String text, String other) {
    assertThat(differences(text, other)).isEmpty();
  }
}
