/** What goes over the line, and how much of its time that takes. */
@NullMarked
package org.headhouse.linter.rules.traffic;

import org.jspecify.annotations.NullMarked;
