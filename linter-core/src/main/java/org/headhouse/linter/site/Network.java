package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * The Ethernet settings of a unit, as they are written.
 *
 * @param place the key {@code network}
 * @param ip the address with the length of its network prefix, {@code 192.168.40.12/24}
 */
public record Network(Place place, Setting<String> ip, Setting<String> gateway) {}
