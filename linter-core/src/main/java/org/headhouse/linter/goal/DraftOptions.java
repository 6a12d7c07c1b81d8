package org.headhouse.linter.goal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * What a user says of a new site in addition to its list, in words; null where nothing is said.
 *
 * @param title as people say it
 * @param readings of the weather station
 * @param baud the rate of the line in bit/s
 * @param biasSupply for bias resistors at the head unit
 */
public record DraftOptions(
    @Nullable String title,
    @Nullable List<String> readings,
    @Nullable Integer baud,
    @Nullable String parity,
    @Nullable String gauge,
    @Nullable Boolean shielded,
    @Nullable String impedance,
    @Nullable String biasSupply) {
  /** What the weather station measures where nobody says it, separated by commas. */
  public static final String READINGS = "light,temperature,wind-speed,wind-direction,rain";

  /** The rate of the line where nobody says it. */
  public static final String BAUD = "9600";

  /** The parity where nobody says it. */
  public static final String PARITY = "even";

  /** The gauge of the conductors where nobody says it. */
  public static final String GAUGE = "24 AWG";

  /** The impedance of the cable where nobody says it. */
  public static final String IMPEDANCE = "120 ohm";

  public DraftOptions {
    readings = readings == null ? null : List.copyOf(readings);
  }

  /** How the parameters that are given are called, in their order. */
  List<String> given(ParameterNames called) {
    Map<String, @Nullable Object> values = new LinkedHashMap<>();
    values.put("title", title);
    values.put("readings", readings);
    values.put("baud", baud);
    values.put("parity", parity);
    values.put("gauge", gauge);
    values.put("shielded", shielded);
    values.put("impedance", impedance);
    values.put("biasSupply", biasSupply);
    return values.entrySet().stream()
        .filter(one -> one.getValue() != null)
        .map(one -> called.of(one.getKey()))
        .toList();
  }

  /**
   * The settings of a draft.
   *
   * @param site its id
   * @throws UserError where a word is not understood, or a site cannot have such a value
   */
  DraftSettings settings(String site, ParameterNames called) throws UserError {
    try {
      return new DraftSettings(
          site,
          title,
          DraftValues.readings(
              called.of("readings"), usual(readings, List.of(READINGS.split(",")))),
          usual(baud, Integer.valueOf(BAUD)),
          DraftValues.parity(called.of("parity"), usual(parity, PARITY)),
          DraftValues.gauge(called.of("gauge"), usual(gauge, GAUGE)),
          usual(shielded, true),
          DraftValues.resistance(called.of("impedance"), usual(impedance, IMPEDANCE)),
          biasSupply == null ? null : DraftValues.voltage(called.of("biasSupply"), biasSupply));
    } catch (IllegalArgumentException wrong) {
      throw new UserError(String.valueOf(wrong.getMessage()), wrong);
    }
  }

  private static <T> T usual(@Nullable T given, T otherwise) {
    return given == null ? otherwise : given;
  }
}
