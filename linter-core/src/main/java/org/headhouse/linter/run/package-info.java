/**
 * What a run over the sites of a repository does, whether the plugin or the command starts it: it
 * finds the sites, makes the linter, reports the results, writes the result files and returns how
 * the run ended.
 *
 * <p>The caller brings the parameters, as a request, and a console. Nothing here prints by itself,
 * or knows how a parameter was given.
 */
@NullMarked
@Internal
package org.headhouse.linter.run;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
