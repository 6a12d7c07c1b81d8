/**
 * The language server of the command: sites are checked in an editor while they are written.
 *
 * <p>It keeps the texts that are open and nothing else, writes no file, and prints nothing but the
 * protocol. The library for the protocol is known here only. It is an optional dependency: nothing
 * of this package is loaded where nobody asks for the server.
 */
@NullMarked
@Internal
package org.headhouse.linter.editor;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
