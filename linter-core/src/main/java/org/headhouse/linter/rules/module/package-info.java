/** Whether a unit can reach the line at all. */
@NullMarked
package org.headhouse.linter.rules.module;

import org.jspecify.annotations.NullMarked;
