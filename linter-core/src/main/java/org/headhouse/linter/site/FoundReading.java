package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * What was found at one item of a line that misbehaves, or where the answers end.
 *
 * @param at the name of the item at whose terminals the meter was held
 * @param side of a repeater
 * @param toward which way the pair resistance was measured where the chain was opened at the item;
 *     missing where it was not opened
 * @param pairResistance between D1 and D0, all supplies off
 * @param loopResistance the same with the far end shorted and the terminators off
 * @param idleVoltage D1 minus D0 while nobody sends; negative where they are crossed
 * @param d1Voltage D1 against common while nobody sends
 * @param d0Voltage D0 against common while nobody sends
 * @param firstSilent the name of the first unit that does not answer; then there is nothing else
 */
public record FoundReading(
    Place place,
    Setting<String> at,
    Setting<Side> side,
    Setting<Toward> toward,
    Setting<Resistance> pairResistance,
    Setting<Resistance> loopResistance,
    Setting<Voltage> idleVoltage,
    Setting<Voltage> d1Voltage,
    Setting<Voltage> d0Voltage,
    Setting<String> firstSilent) {
  @Internal
  public FoundReading {}

  /** Where the answers end. */
  public static FoundReading silent(Place place, Setting<String> firstSilent) {
    return new FoundReading(
        place,
        new Setting.Missing<>(place),
        new Setting.Missing<>(place),
        new Setting.Missing<>(place),
        new Setting.Missing<>(place),
        new Setting.Missing<>(place),
        new Setting.Missing<>(place),
        new Setting.Missing<>(place),
        new Setting.Missing<>(place),
        firstSilent);
  }
}
