/**
 * The bias of a segment.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.bias;

import org.jspecify.annotations.NullMarked;
