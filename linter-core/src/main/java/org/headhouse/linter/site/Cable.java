package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * The cable of the trunk.
 *
 * @param place the key {@code cable}
 */
public record Cable(
    Place place, Setting<Gauge> gauge, Setting<Boolean> shielded, Setting<Resistance> impedance) {}
