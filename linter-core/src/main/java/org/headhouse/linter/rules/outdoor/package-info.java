/**
 * Where units take the outdoor readings from, and what they do without them.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.outdoor;

import org.jspecify.annotations.NullMarked;
