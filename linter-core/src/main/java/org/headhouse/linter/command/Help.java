package org.headhouse.linter.command;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.report.ToolVersion;

/** What the command prints about itself. */
final class Help {
  private static final int COLUMN = 28;

  private Help() {}

  static List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("Checks site definitions.");
    lines.add("");
    lines.add("  java -jar <this jar> [options]              all sites of a folder");
    lines.add("  java -jar <this jar> [options] [--] <file>… single files, as a hook names them");
    lines.add("  java -jar <this jar> diagnose [options] [--] [<file>…]");
    lines.add("                                              which faults agree with readings");
    lines.add("  java -jar <this jar> [options] [--name=<file>] -");
    lines.add("                                              one text from the standard input");
    lines.add("  java -jar <this jar> lsp [--policy=<file>] [--deviceTypes=<file>]");
    lines.add("                                              the language server, for an editor");
    lines.add("");
    for (CommandOption option : CommandOption.values()) {
      String form = "  " + option.form();
      lines.add(form + " ".repeat(Math.max(1, COLUMN - form.length())) + option.meaning());
    }
    lines.add("");
    lines.add("Named files are checked if their names are those of sites. If the policy or the");
    lines.add("device types are named, all sites of their folder are checked.");
    lines.add("");
    lines.add("Results go to the standard output, everything else to the standard error. The exit");
    lines.add("code is 0 if nothing fails, 1 if results do, 2 if not everything could be checked.");
    return lines;
  }

  static String version() {
    return "Headhouse Linter " + ToolVersion.text().orElse("of unknown version");
  }
}
