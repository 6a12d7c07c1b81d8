package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.report.StyledLine.Piece;
import org.headhouse.linter.report.StyledLine.Style;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.InvisibleCharacters;
import org.headhouse.linter.source.Region;

/**
 * Results as lines of text: the form of the GNU coding standards, the excerpt under it, then why it
 * matters and what to do.
 */
public final class TextReport {
  private TextReport() {}

  /** {@code file:line:column: level: fact [rule]}. */
  public static String headline(Result result) {
    return styledHeadline(result).text();
  }

  /** {@code file: text} of what the tool itself could not do, or the text alone. */
  public static String headline(Notification notification) {
    return printable(
        notification.file() == null
            ? notification.text()
            : notification.file() + ": " + notification.text());
  }

  /** The same with the whole message: {@code file:line:column: level: fact: why; fix [rule]}. */
  public static String inOneLine(Result result) {
    return position(result.location())
        + ": "
        + result.level().word()
        + ": "
        + printable(result.message().text())
        + " ["
        + result.rule()
        + "]";
  }

  /**
   * The headline, the lines of the file with the regions marked, related places elsewhere, why it
   * matters, and what to do.
   */
  public static List<String> lines(Result result) {
    return styled(result).stream().map(StyledLine::text).toList();
  }

  /** The same lines in pieces, for a terminal. */
  public static List<StyledLine> styled(Result result) {
    List<StyledLine> lines = new ArrayList<>();
    lines.add(styledHeadline(result));
    lines.addAll(Excerpt.of(result, style(result.level())));
    for (RelatedLocation related : result.related()) {
      if (!Excerpt.shows(result, related)) {
        lines.add(
            StyledLine.plain(
                position(related.location()) + ": related: " + printable(related.text())));
      }
    }
    lines.addAll(advice(result.message(), result.fix() == null ? "" : whoDoesIt(result.fix())));
    return lines;
  }

  private static StyledLine styledHeadline(Result result) {
    return headline(
        result.location(), result.level(), result.message(), " [" + result.rule() + "]");
  }

  private static StyledLine headline(Location location, Level level, Message message, String end) {
    return new StyledLine(
        List.of(
            new Piece(Style.PLAIN, position(location) + ": "),
            new Piece(style(level), level.word()),
            new Piece(Style.PLAIN, ": "),
            new Piece(Style.STRONG, printable(message.fact())),
            new Piece(Style.PLAIN, end)));
  }

  private static Style style(Level level) {
    return switch (level) {
      case ERROR -> Style.ERROR;
      case WARNING -> Style.WARNING;
      case NOTE, NONE -> Style.NOTE;
    };
  }

  private static List<StyledLine> advice(Message message, String end) {
    return List.of(
        part("  why: ", printable(message.reason())),
        part("  fix: ", printable(message.remedy()) + end));
  }

  private static StyledLine part(String name, String text) {
    return new StyledLine(List.of(new Piece(Style.STRONG, name), new Piece(Style.PLAIN, text)));
  }

  private static String whoDoesIt(Fix fix) {
    return switch (fix.kind()) {
      case SAFE -> " (goal fix does this)";
      case PROPOSED -> " (in the file, goal fix does this as a proposed fix)";
    };
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

  /** The headline of a fault of a file that no rule checks. */
  public static String headline(Location location, Message message) {
    return headline(location, Level.ERROR, message, "").text();
  }

  /** The same with the whole message. */
  public static String inOneLine(Location location, Message message) {
    return position(location) + ": error: " + printable(message.text());
  }

  /** The lines of such a fault, as those of a result. */
  public static List<String> lines(Location location, Message message) {
    List<StyledLine> lines = new ArrayList<>();
    lines.add(headline(location, Level.ERROR, message, ""));
    lines.addAll(Excerpt.of(location, Style.ERROR));
    lines.addAll(advice(message, ""));
    return lines.stream().map(StyledLine::text).toList();
  }

  private static String position(Location location) {
    Region region = location.region();
    return printable(location.file()) + ":" + region.startLine() + ":" + region.startColumn();
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
    ResultCounts counts = new ResultCounts();
    counts.add(results);
    return counts.lines(files, units);
  }
}
