package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * How a piece of equipment is asked.
 *
 * @param place the key {@code polled}
 * @param by who asks it
 * @param registers how many 16-bit registers each time
 * @param every the period
 */
public record Polled(
    Place place, Setting<PolledBy> by, Setting<Integer> registers, Setting<Interval> every) {}
