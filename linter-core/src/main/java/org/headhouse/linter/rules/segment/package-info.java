/**
 * What a segment carries.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.segment;

import org.jspecify.annotations.NullMarked;
