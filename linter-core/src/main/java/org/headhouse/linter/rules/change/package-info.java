/**
 * How a line that is live may change; these rules need an earlier state of the site.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.change;

import org.jspecify.annotations.NullMarked;
