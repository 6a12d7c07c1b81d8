package org.headhouse.linter.draft;

import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * What a list of units does not say of its site.
 *
 * @param site the id
 * @param title as people say it, or null
 * @param readings of the weather station, in the order in which they are written
 * @param baud the rate of the line, one that the format knows
 * @param gauge of the conductors
 * @param impedance of the cable; its ends are terminated by as much
 * @param biasSupply the supply for bias resistors at the head unit; null where none are to be
 *     fitted, or nobody knows
 */
public record DraftSettings(
    String site,
    @Nullable String title,
    List<Reading> readings,
    int baud,
    Parity parity,
    Gauge gauge,
    boolean shielded,
    Resistance impedance,
    @Nullable Voltage biasSupply) {

  /**
   * @throws IllegalArgumentException where a site cannot have such a value; the message says what
   *     to write
   */
  public DraftSettings {
    readings = List.copyOf(readings);
    require(
        Format.isId(site),
        "the id of a site cannot be \""
            + site
            + "\": write lower-case letters, digits, and single hyphens between them");
    require(
        title == null || (!title.isBlank() && title.length() <= Format.LONGEST_TEXT),
        "the title must have 1 to " + Format.LONGEST_TEXT + " characters");
    require(
        !readings.isEmpty() && readings.size() == Set.copyOf(readings).size(),
        "the readings must be one or more, each written once");
    require(
        LineSettings.BAUD_RATES.contains(baud),
        "the baud rate cannot be " + baud + ": write one of " + LineSettings.BAUD_RATES);
    require(
        !(gauge instanceof Gauge.Area area) || area.squareMillimetres() > 0,
        "the gauge must be more than 0 mm2");
    require(impedance.ohms() > 0, "the impedance must be more than 0 ohm");
    require(biasSupply == null || biasSupply.volts() > 0, "the bias supply must be more than 0 V");
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(otherwise);
    }
  }
}
