/**
 * The names by which people tell units apart.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.name;

import org.jspecify.annotations.NullMarked;
