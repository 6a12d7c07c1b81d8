/**
 * The command, for uses in which a build takes too long, such as a hook of git. It turns arguments
 * into a request, and the outcome of its run into an exit code.
 *
 * <p>Everything that a run does is in the packages above; only this one prints, and ends the
 * program.
 */
@NullMarked
@Internal
package org.headhouse.linter.command;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
