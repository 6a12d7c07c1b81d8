/**
 * What a line needs of its head unit.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.head;

import org.jspecify.annotations.NullMarked;
