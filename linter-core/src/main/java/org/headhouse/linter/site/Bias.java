package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * Resistors that hold an idle line: one from the supply to D1, one from D0 to common.
 *
 * @param at the item that they are fitted at
 * @param side of a repeater; out where nothing is written
 * @param resistors the value of each of the two
 * @param tolerance of the resistors
 */
public record Bias(
    Place place,
    Setting<String> at,
    Setting<Side> side,
    Setting<Resistance> resistors,
    Setting<Voltage> supply,
    Setting<Percentage> tolerance) {
  @Internal
  public Bias {}
}
