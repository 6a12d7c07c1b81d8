/**
 * What goes over the line, and how much of its time that takes.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.traffic;

import org.jspecify.annotations.NullMarked;
