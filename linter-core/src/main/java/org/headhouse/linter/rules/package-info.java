/**
 * The built-in rules: one small class each, in groups by subject, and the list of all.
 *
 * <p>What two rules need lies in the model or in {@code line}, not in a helper of rules.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules;

import org.jspecify.annotations.NullMarked;
