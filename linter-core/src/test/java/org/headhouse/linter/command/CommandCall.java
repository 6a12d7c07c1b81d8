package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;

/** A call of the command in this process, as it ended. */
record CommandCall(int code, String out, String err) {

  static CommandCall of(Path folder, String... arguments) {
    return of(InputStream.nullInputStream(), folder, arguments);
  }

  static CommandCall of(InputStream in, Path folder, String... arguments) {
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    ByteArrayOutputStream errors = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(written, false, UTF_8);
    PrintStream err = new PrintStream(errors, false, UTF_8);
    int code = new Command(in, out, err, folder, false).run(List.of(arguments));
    out.flush();
    err.flush();
    return new CommandCall(code, text(written), text(errors));
  }

  private static String text(ByteArrayOutputStream bytes) {
    return bytes.toString(UTF_8).replace(System.lineSeparator(), "\n");
  }

  /** The last line of what is no result. */
  String lastError() {
    return err.lines().reduce("", (before, line) -> line);
  }
}
