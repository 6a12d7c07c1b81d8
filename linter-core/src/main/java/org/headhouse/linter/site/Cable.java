package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * The cable of the trunk.
 *
 * @param place the key {@code cable}
 * @param velocityFactor the speed of a signal in it as a share of that of light
 * @param capacitance of a metre, between the two conductors
 */
public record Cable(
    Place place,
    Setting<Gauge> gauge,
    Setting<Boolean> shielded,
    Setting<Resistance> impedance,
    Setting<Double> velocityFactor,
    Setting<Capacitance> capacitance) {
  @Internal
  public Cable {}
}
