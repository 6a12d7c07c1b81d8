package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * How the supervising software polls the units.
 *
 * @param every the period in which each zone is polled once
 * @param registers how many 16-bit registers of each unit
 */
public record Polling(
    Place place,
    Setting<Interval> every,
    Setting<Integer> registers,
    Setting<Interval> timeout,
    Setting<Integer> retries) {
  @Internal
  public Polling {}
}
