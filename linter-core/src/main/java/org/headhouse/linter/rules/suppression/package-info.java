/**
 * What is checked of the suppressions of a site; none of it can be suppressed.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.suppression;

import org.jspecify.annotations.NullMarked;
