package org.headhouse.linter.change;

import org.jspecify.annotations.Nullable;

/**
 * One value that becomes another.
 *
 * @param what the key as the file has it, such as {@code baud}
 * @param from as the file has it, or null where nothing was written
 * @param to as the file has it, or null where nothing is written
 */
public record ValueChange(String what, @Nullable String from, @Nullable String to) {}
