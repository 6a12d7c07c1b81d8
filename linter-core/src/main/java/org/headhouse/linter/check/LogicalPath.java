package org.headhouse.linter.check;

import org.jspecify.annotations.Nullable;

/**
 * The place of a result in the words of the site: the keys that lead there, items of the chain by
 * name.
 *
 * @param text the steps with slashes between
 * @param unit the unit or repeater on the way, or null
 */
record LogicalPath(String text, @Nullable String unit) {}
