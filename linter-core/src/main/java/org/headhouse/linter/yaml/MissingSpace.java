package org.headhouse.linter.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;

/**
 * Finds a colon or hyphen without a space after it. The parser takes it for a part of a text, and
 * reports the next line, which is right.
 */
final class MissingSpace {
  private static final int LONGEST_LINE = 200;
  private static final Pattern COLON =
      Pattern.compile("(\\s*(?:- +)*([a-z][a-z0-9-]*)):([^\\s/:].*)");
  private static final Pattern HYPHEN = Pattern.compile("(\\s*)-([a-z][a-z0-9-]*:.*)");

  private MissingSpace() {}

  /** The finding for a line that starts with a key and a colon without the space. */
  static Optional<Finding> behindColon(SourceText source, int line) {
    Matcher matcher = COLON.matcher(source.line(line, LONGEST_LINE));
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String rest = matcher.group(3);
    boolean isOther = OtherSpaces.isOther(rest.charAt(0));
    return Optional.of(
        finding(
            Region.onLine(line, matcher.group(1).length() + 1, isOther ? 2 : 1),
            (isOther ? "a space of another kind follows" : "a space is missing after")
                + " the colon of \""
                + matcher.group(2)
                + "\"",
            "write "
                + matcher.group(2)
                + ": "
                + (isOther ? rest.substring(1) : rest).strip()
                + (isOther ? ", with an ordinary space" : "")));
  }

  /** The finding for a line that starts with a hyphen and a key without the space. */
  static Optional<Finding> behindHyphen(SourceText source, int line) {
    Matcher matcher = HYPHEN.matcher(source.line(line, LONGEST_LINE));
    return matcher.matches()
        ? Optional.of(
            finding(
                Region.onLine(line, matcher.group(1).length() + 1, 1),
                "a space is missing after the hyphen",
                "write - " + matcher.group(2).strip()))
        : Optional.empty();
  }

  private static Finding finding(Region region, String fact, String remedy) {
    return Finding.of(
        SyntaxFaults.SYNTAX, region, new Message(fact, SyntaxFaults.NOT_READ, remedy));
  }

  /** The nearest line above that is not blank; 0 where there is none. */
  static int lineAbove(SourceText source, int line) {
    int above = line - 1;
    while (above > 0 && source.line(above, LONGEST_LINE).isBlank()) {
      above--;
    }
    return above;
  }
}
