/**
 * Earlier states of the sites, out of the history of git: for the parameter {@code since} of the
 * plugin and of the command, and for what sheets say of earlier proofs.
 *
 * <p>Git's library is known here only. It is an optional dependency: nothing of this package is
 * loaded where nobody names a revision or asks for sheets.
 */
@NullMarked
@Internal
package org.headhouse.linter.revision;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
