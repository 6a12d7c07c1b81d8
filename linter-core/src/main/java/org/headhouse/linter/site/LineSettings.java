package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * What holds for the whole line.
 *
 * @param place the key {@code line}
 * @param baud in bit/s
 * @param bias where the line is biased; given as an empty list never, missing where there is none
 * @param maximumTemperature of the conductors
 */
public record LineSettings(
    Place place,
    Setting<Integer> baud,
    Setting<Parity> parity,
    Setting<Integer> stopBits,
    Setting<Cable> cable,
    Setting<List<Bias>> bias,
    Setting<Broadcast> broadcast,
    Setting<Temperature> maximumTemperature) {
  @Internal
  public LineSettings {}

  /** The rates that a line can have, in bit/s. */
  public static final List<Integer> BAUD_RATES =
      List.of(1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200);
}
