package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.InvisibleCharacters;
import org.headhouse.linter.source.Region;

/** Results as lines of text: the form of the GNU coding standards, and the excerpt under it. */
public final class TextReport {
  private TextReport() {}

  /** {@code file:line:column: level: message [rule]}. */
  public static String headline(Result result) {
    return position(result.location())
        + ": "
        + result.level().word()
        + ": "
        + printable(result.message().text())
        + " ["
        + result.rule()
        + "]";
  }

  /** The headline, the line of the file with the region marked, and the related locations. */
  public static List<String> lines(Result result) {
    List<String> lines = new ArrayList<>();
    lines.add(headline(result));
    lines.addAll(excerpt(result.location()));
    for (RelatedLocation related : result.related()) {
      lines.add(position(related.location()) + ": related: " + printable(related.text()));
    }
    return lines;
  }

  /** That a file has more results of a rule than are shown. */
  public static String more(String file, Level level, int number, String rule) {
    return printable(file)
        + ": "
        + level.word()
        + ": "
        + number
        + " more of these are not shown ["
        + rule
        + "]";
  }

  /** The same for a fault of a file that no rule checks. */
  public static String headline(Location location, Message message) {
    return position(location) + ": error: " + printable(message.text());
  }

  /** The headline of such a fault, and the line of the file with the region marked. */
  public static List<String> lines(Location location, Message message) {
    List<String> lines = new ArrayList<>();
    lines.add(headline(location, message));
    lines.addAll(excerpt(location));
    return lines;
  }

  private static String position(Location location) {
    Region region = location.region();
    return printable(location.file()) + ":" + region.startLine() + ":" + region.startColumn();
  }

  private static List<String> excerpt(Location location) {
    String line = location.line();
    if (line.isBlank()) {
      return List.of();
    }
    Region region = location.region();
    String number = String.valueOf(region.startLine());
    int length = line.codePointCount(0, line.length());
    int start = Math.min(region.startColumn() - 1, length);
    int end =
        region.endLine() == region.startLine() ? Math.min(region.endColumn() - 1, length) : length;
    String margin = " ".repeat(number.length());
    if (region.startColumn() - 1 > length) {
      return List.of("  " + number + " | " + printable(line)); // the line was cut before it
    }
    return List.of(
        "  " + number + " | " + printable(line),
        "  " + margin + " | " + " ".repeat(start) + "^".repeat(Math.max(1, end - start)));
  }

  /**
   * A text on one line, with what cannot be seen shown; safe for a terminal, and for a server that
   * looks for commands in the log of a build.
   */
  public static String printable(String text) {
    return LogCommands.broken(InvisibleCharacters.shown(text));
  }

  /** How many results there are, by level and by rule. */
  public static List<String> summary(List<Result> results, int files, int units) {
    Map<Level, Integer> byLevel = new EnumMap<>(Level.class);
    Map<String, Integer> byRule = new TreeMap<>();
    int suppressed = 0;
    int known = 0;
    for (Result result : results) {
      if (result.suppressed()) {
        suppressed++;
      } else if (result.known()) {
        known++;
      } else {
        byLevel.merge(result.level(), 1, Integer::sum);
        byRule.merge(result.rule(), 1, Integer::sum);
      }
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        counted(files, "site")
            + ", "
            + counted(units, "unit")
            + ": "
            + counted(byLevel.getOrDefault(Level.ERROR, 0), "error")
            + ", "
            + counted(byLevel.getOrDefault(Level.WARNING, 0), "warning")
            + ", "
            + counted(byLevel.getOrDefault(Level.NOTE, 0), "note")
            + (suppressed == 0 ? "" : ", " + suppressed + " suppressed")
            + (known == 0 ? "" : ", " + known + " known from the baseline"));
    byRule.forEach((rule, count) -> lines.add(String.format(Locale.ROOT, "%6d  %s", count, rule)));
    return lines;
  }

  private static String counted(int number, String word) {
    return number + " " + word + (number == 1 ? "" : "s");
  }
}
