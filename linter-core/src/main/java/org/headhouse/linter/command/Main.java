package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;

/** Checks sites from the command line; {@code --help} lists the options. */
public final class Main {
  private Main() {}

  /** Runs the command in the current folder, and ends the program with its exit code. */
  public static void main(String[] arguments) {
    PrintStream out = stream(FileDescriptor.out);
    PrintStream err = stream(FileDescriptor.err);
    if (arguments.length > 0 && arguments[0].equals(Command.EDITOR)) {
      System.setOut(err); // what a rule of another jar prints is no part of the protocol
    }
    FileInputStream in = new FileInputStream(FileDescriptor.in);
    int code = new Command(in, out, err, Path.of(""), Colours.areWanted()).run(List.of(arguments));
    // Output that was lost, to a full disk or a closed pipe, is not a clean result.
    boolean lost = out.checkError() || err.checkError();
    System.exit(lost && code == Command.CLEAN ? Command.TROUBLE : code);
  }

  /** In UTF-8 whatever the locale, as the files of sites are. */
  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(
        new BufferedOutputStream(new FileOutputStream(descriptor)), false, UTF_8);
  }
}
