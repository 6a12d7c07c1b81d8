/**
 * Fixes: from what a rule means to replacements in the text, and replacements applied to the
 * original bytes.
 *
 * <p>What is right is known by the rules; the caller brings a check of the fixed bytes. No rule may
 * enter.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.fix;

import org.jspecify.annotations.NullMarked;
