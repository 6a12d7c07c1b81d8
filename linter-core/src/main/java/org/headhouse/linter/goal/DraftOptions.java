package org.headhouse.linter.goal;

import java.util.List;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * What a user says of a new site in addition to its list, in words.
 *
 * @param title as people say it, or null
 * @param readings of the weather station
 * @param baud the rate of the line in bit/s
 * @param biasSupply for bias resistors at the head unit, or null
 */
public record DraftOptions(
    @Nullable String title,
    List<String> readings,
    int baud,
    String parity,
    String gauge,
    boolean shielded,
    String impedance,
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
    readings = List.copyOf(readings);
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
          DraftValues.readings(called.of("readings"), readings),
          baud,
          DraftValues.parity(called.of("parity"), parity),
          DraftValues.gauge(called.of("gauge"), gauge),
          shielded,
          DraftValues.resistance(called.of("impedance"), impedance),
          biasSupply == null ? null : DraftValues.voltage(called.of("biasSupply"), biasSupply));
    } catch (IllegalArgumentException wrong) {
      throw new UserError(String.valueOf(wrong.getMessage()), wrong);
    }
  }
}
