package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * Which item of the chain one is.
 *
 * @param place the item as a whole
 * @param index its place in the chain, from 0
 * @param name as people call it
 */
public record ItemIdentity(Place place, int index, Setting<String> name) {}
