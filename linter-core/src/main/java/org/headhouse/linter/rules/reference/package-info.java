/**
 * Names that stand for something written elsewhere.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.reference;

import org.jspecify.annotations.NullMarked;
