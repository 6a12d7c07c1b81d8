/**
 * Fixes: from what a rule means to replacements in the text, and replacements applied to the
 * original bytes.
 *
 * <p>What is right is known by the rules; the caller brings a check of the fixed bytes. No rule may
 * enter.
 */
@NullMarked
@Internal
package org.headhouse.linter.fix;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
