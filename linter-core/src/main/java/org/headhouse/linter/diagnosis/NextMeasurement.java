package org.headhouse.linter.diagnosis;

import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Toward;
import org.jspecify.annotations.Nullable;

/**
 * What to measure, and where.
 *
 * @param reading the key under which a file has it, such as {@code pair-resistance}
 * @param at the name of the item
 * @param side of a repeater; null of anything else
 * @param toward which way to measure with the chain opened at the item; null where it stays closed
 */
public record NextMeasurement(
    String reading, String at, @Nullable Side side, @Nullable Toward toward) {}
