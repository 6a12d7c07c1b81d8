/** The names by which people tell units apart. */
@NullMarked
package org.headhouse.linter.rules.name;

import org.jspecify.annotations.NullMarked;
