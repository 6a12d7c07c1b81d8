package org.headhouse.linter.site;

/**
 * What is fitted at an item.
 *
 * @param typeId the id of its type, as it is written
 * @param type what is known of that type; {@link DeviceType#UNKNOWN} where nothing is
 */
public record Device(Setting<String> typeId, DeviceType type) {}
