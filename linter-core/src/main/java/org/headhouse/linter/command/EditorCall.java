package org.headhouse.linter.command;

import java.io.InputStream;
import java.io.OutputStream;
import org.headhouse.linter.editor.EditorServer;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.SettingsRequest;

/**
 * The call of an editor, which then speaks over both streams. A class of its own, so that the
 * library for the protocol is loaded only where an editor calls.
 */
record EditorCall(SettingsRequest settings, InputStream in, OutputStream out) {

  int serve() throws UserError {
    return EditorServer.serve(
        in, out, settings, Command.class.getPackage().getImplementationVersion());
  }
}
