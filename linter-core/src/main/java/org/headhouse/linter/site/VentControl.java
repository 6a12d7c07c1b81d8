package org.headhouse.linter.site;

/**
 * What a unit moves, and by which readings.
 *
 * @param outdoor where it takes the outdoor readings from
 * @param vents those that it moves
 * @param onStaleReadings what it does with them once no reading has come for too long
 */
public record VentControl(
    Setting<Outdoor> outdoor, Setting<Vents> vents, Setting<StaleAction> onStaleReadings) {}
