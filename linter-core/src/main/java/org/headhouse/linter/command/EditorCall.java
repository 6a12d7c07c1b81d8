package org.headhouse.linter.command;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.EnumSet;
import org.headhouse.linter.editor.EditorServer;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.SettingsRequest;

/**
 * The call of an editor, which then speaks over both streams. A class of its own, so that the
 * library for the protocol is loaded only where an editor calls.
 */
record EditorCall(SettingsRequest settings, InputStream in, OutputStream out) {

  int serve(Arguments arguments) throws UserError {
    arguments.allowOnly(
        Command.EDITOR, EnumSet.of(CommandOption.POLICY, CommandOption.DEVICE_TYPES));
    if (!arguments.files().isEmpty()) {
      throw new UserError(
          Command.EDITOR + " takes no files: the editor says which texts it has; leave them out");
    }
    return EditorServer.serve(
        in, out, settings, Command.class.getPackage().getImplementationVersion());
  }
}
