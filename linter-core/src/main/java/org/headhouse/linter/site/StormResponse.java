package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * That a unit shut its vents when the wind limit was passed.
 *
 * @param unit its name
 * @param limit the wind limit that was passed; missing where only the name is written
 * @param closedIn what the watch showed; missing where only the name is written
 */
public record StormResponse(
    Place place, Setting<String> unit, Setting<WindSpeed> limit, Setting<Interval> closedIn) {}
