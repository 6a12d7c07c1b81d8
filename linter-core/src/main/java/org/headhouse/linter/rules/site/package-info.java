/** The ids of sites and their files. */
@NullMarked
@Internal
package org.headhouse.linter.rules.site;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
