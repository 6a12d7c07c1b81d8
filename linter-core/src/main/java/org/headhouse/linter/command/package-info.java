/**
 * The command for where a build takes too long, such as a hook of git: arguments to a run, its
 * outcome to an exit code.
 *
 * <p>Everything that a run does is in the packages before; only here something is printed, and the
 * program ended.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.command;

import org.jspecify.annotations.NullMarked;
