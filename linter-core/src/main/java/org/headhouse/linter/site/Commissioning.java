package org.headhouse.linter.site;

import java.time.LocalDate;
import java.util.List;
import org.headhouse.linter.source.Place;

/**
 * The record of the visit on which the line was proved.
 *
 * @param place the key {@code commissioning}
 * @param pairResistance between A and B at the head unit, power off
 * @param idleVoltage D1 minus D0 at the head unit, line idle
 * @param outdoorReadingsSeen the units whose display showed the outdoor readings, by name
 */
public record Commissioning(
    Place place,
    Setting<LocalDate> date,
    Setting<String> by,
    Setting<Resistance> pairResistance,
    Setting<Voltage> idleVoltage,
    Setting<List<Setting<String>>> outdoorReadingsSeen) {}
