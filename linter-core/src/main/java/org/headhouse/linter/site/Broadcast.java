package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * What the head unit sends to all units.
 *
 * @param registers how many 16-bit registers
 * @param every the period
 */
public record Broadcast(Place place, Setting<Integer> registers, Setting<Interval> every) {}
