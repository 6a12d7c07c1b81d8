/**
 * The ids of sites and their files.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.site;

import org.jspecify.annotations.NullMarked;
