package org.headhouse.linter.draft;

import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.Length;
import org.jspecify.annotations.Nullable;

/**
 * One unit of a list.
 *
 * @param address that it gets on the line
 * @param cableToNext null where the list does not say, and for the last unit
 * @param typeId null where the list does not say
 * @param type {@link DeviceType#UNKNOWN} where nothing is known of it
 */
record ListedUnit(
    String name,
    int address,
    @Nullable Length cableToNext,
    @Nullable String typeId,
    DeviceType type) {}
