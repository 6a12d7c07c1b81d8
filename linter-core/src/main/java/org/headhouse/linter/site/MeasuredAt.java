package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * What the meter showed at one item.
 *
 * @param at the name of the item
 * @param side of a repeater
 * @param pairResistance between D1 and D0, power off
 * @param idleVoltage D1 minus D0 while nobody sends; negative where they are crossed
 */
public record MeasuredAt(
    Place place,
    Setting<String> at,
    Setting<Side> side,
    Setting<Resistance> pairResistance,
    Setting<Voltage> idleVoltage) {
  @Internal
  public MeasuredAt {}
}
