/** The ids of sites and their files. */
@NullMarked
package org.headhouse.linter.rules.site;

import org.jspecify.annotations.NullMarked;
