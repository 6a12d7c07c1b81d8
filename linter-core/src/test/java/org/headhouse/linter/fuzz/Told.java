package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;

/**
 * What holds of everything that is told of one file: it lies in the file, and it can be printed.
 *
 * <p>Lines and columns are counted apart from the code under test.
 */
public final class Told {
  private final String file;
  private final List<String> lines;

  /**
   * @param file how the file is called in results
   * @param bytes of the file
   */
  public Told(String file, byte[] bytes) {
    this.file = file;
    String text = new String(bytes, UTF_8);
    String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
    this.lines = List.of(unmarked.split("\r\n|[\n\r]", -1));
  }

  /** Demands that nothing went wrong inside the tool. */
  public static void noTrouble(List<Notification> notifications) {
    Demand.that(notifications.isEmpty(), "the tool had trouble: %s", notifications);
  }

  /** Looks at results in their order. */
  public void results(List<Result> results) {
    for (Result result : results) {
      Demand.that(result.level() != Level.NONE, "a result without a level: %s", result);
      message(result.message());
      location(result.location());
      for (RelatedLocation related : result.related()) {
        location(related.location());
        Demand.that(!related.text().isBlank(), "a related location without a text: %s", result);
      }
      printable(TextReport.lines(result));
    }
    Demand.that(
        results.equals(results.stream().sorted(Result.ORDER).toList()),
        "results out of order: %s",
        results);
  }

  /** Looks at a message. */
  public static void message(Message message) {
    boolean whole =
        !message.fact().isBlank() && !message.reason().isBlank() && !message.remedy().isBlank();
    Demand.that(whole, "a message with an empty part: %s", message);
  }

  /** Looks at a location; one in another file is passed over. */
  public void location(Location location) {
    if (!location.file().equals(file)) {
      return;
    }
    Region region = location.region();
    region(region);
    Demand.that(
        lines.get(region.startLine() - 1).startsWith(location.line()),
        "the line of %s is not: %s",
        region,
        location.line());
  }

  /** Looks at a region of the file. */
  public void region(Region region) {
    Demand.that(region.endLine() <= lines.size(), "%s beyond %d lines", region, lines.size());
    int startLength = length(region.startLine());
    int endLength = length(region.endLine());
    // The end of a line may be pointed at, and counts as one character.
    Demand.that(
        region.startColumn() <= startLength + 1, "%s beyond %d columns", region, startLength);
    Demand.that(
        region.endColumn() >= 1 && region.endColumn() <= endLength + 2,
        "%s beyond %d columns",
        region,
        endLength);
    Demand.that(
        region.startLine() < region.endLine() || region.startColumn() <= region.endColumn(),
        "%s ends before it starts",
        region);
  }

  private int length(int number) {
    String line = lines.get(number - 1);
    return line.codePointCount(0, line.length());
  }

  /** Demands that lines are lines to every terminal. */
  public static void printable(List<String> lines) {
    for (String line : lines) {
      Demand.that(
          !line.isBlank() && line.codePoints().noneMatch(Told::breaksLines),
          "a line that cannot be printed: %s",
          line);
    }
  }

  private static boolean breaksLines(int c) {
    return Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || isTurning(c);
  }

  /** The controls of Unicode's bidirectional algorithm (UAX #9, table 4). */
  private static boolean isTurning(int c) {
    return (c >= '\u202A' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069');
  }
}
