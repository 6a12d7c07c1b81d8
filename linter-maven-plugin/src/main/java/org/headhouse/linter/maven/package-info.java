/** Goals: parameters become a request to the library, its report becomes log and outcome. */
@NullMarked
package org.headhouse.linter.maven;

import org.jspecify.annotations.NullMarked;
