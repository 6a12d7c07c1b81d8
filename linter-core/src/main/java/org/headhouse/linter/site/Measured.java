package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.source.Place;

/**
 * What the meter showed.
 *
 * @param pairResistance between D1 and D0 at the head unit, power off
 * @param idleVoltage D1 minus D0 at the head unit while nobody sends; negative where they are
 *     crossed
 * @param elsewhere what it showed at other items
 */
public record Measured(
    Place place,
    Setting<Resistance> pairResistance,
    Setting<Voltage> idleVoltage,
    Setting<List<Setting<MeasuredAt>>> elsewhere) {}
