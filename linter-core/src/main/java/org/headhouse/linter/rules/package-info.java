/**
 * The built-in rules: one small class each, in groups by subject, and the list of all.
 *
 * <p>What rules of one subject share is in the package of that subject; what rules of several need
 * belongs into the model, the figures or {@code line}.
 */
@NullMarked
@Internal
package org.headhouse.linter.rules;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
