package org.headhouse.linter.site;

/**
 * What is fitted at an item.
 *
 * @param typeId the id of its type, as it is written
 * @param type what is known of that type; {@link DeviceType#UNKNOWN} where nothing is
 * @param serialNumber of this one device
 * @param isolated whether its interface to the line is galvanically isolated, as the item says; the
 *     type may say it as well
 */
public record Device(
    Setting<String> typeId,
    DeviceType type,
    Setting<String> serialNumber,
    Setting<Boolean> isolated) {}
