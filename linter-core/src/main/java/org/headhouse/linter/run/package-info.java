/**
 * What a run over the sites of a repository does, whoever starts it: it makes the linter, tells the
 * report, writes the result files and says how the run ended.
 *
 * <p>The caller brings the parameters and a console. Nothing here prints by itself, or knows how a
 * parameter was given.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.run;

import org.jspecify.annotations.NullMarked;
