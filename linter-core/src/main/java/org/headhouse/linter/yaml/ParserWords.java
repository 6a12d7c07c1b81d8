package org.headhouse.linter.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Puts the errors of the parser into plain words. */
final class ParserWords {
  private static final int LONGEST_LINE = 400;
  private static final Pattern FOUND =
      Pattern.compile("(?:but found|but got) '?(.+?)'?", Pattern.DOTALL);

  /** A key and its value on one line. */
  private static final Pattern VALUE = Pattern.compile("\\s*(?:- +)*[a-z][a-z0-9-]*: +[^\\s#].*");

  private final String problem;
  private final String reading;
  private final Mark mark;
  private final @Nullable Mark context;
  private final SourceText source;
  private final String found;

  ParserWords(MarkedYAMLException exception, SourceText source) {
    this.problem = exception.getProblem() == null ? "" : exception.getProblem();
    this.reading = exception.getContext() == null ? "" : exception.getContext();
    this.mark = exception.getProblemMark();
    Mark start = exception.getContextMark();
    this.context = start == null || start.getIndex() == mark.getIndex() ? null : start;
    this.source = source;
    int but = problem.indexOf("but ");
    Matcher matcher = FOUND.matcher(but < 0 ? "" : problem.substring(but));
    this.found = matcher.matches() ? matcher.group(1) : "";
  }

  Finding finding() {
    int line = mark.getLine() + 1;
    return OtherSpaces.in(
            source,
            context == null ? 0 : context.getLine() + 1,
            MissingSpace.lineAbove(source, line),
            line)
        .orElseGet(this::ofProblem);
  }

  private Finding ofProblem() {
    if (problem.startsWith("could not find expected ':'")) {
      return missingSpace().orElseGet(this::noColon);
    }
    if (problem.startsWith("mapping values are not allowed")) {
      return secondColon();
    }
    if (problem.startsWith("expected <block end>")) {
      return outOfBlock();
    }
    if (problem.startsWith("expected ',' or ")) {
      return inBrackets(problem.charAt("expected ',' or '".length()));
    }
    if (problem.startsWith("found unexpected end of stream")
        || problem.startsWith("found unexpected document separator")) {
      return openQuote(context == null ? mark : context);
    }
    return ofOneToken();
  }

  private Finding openQuote(Mark start) {
    String rest = rest(start);
    boolean isApostrophe = rest.startsWith("'") && rest.indexOf('\'', 1) < 0;
    return at(
        start,
        "the quoted text that starts here has no closing quote",
        isApostrophe
            ? "write \"" + rest + "\" if it starts with an apostrophe, else write the closing quote"
            : "write the closing quote");
  }

  /** The text from a place to the end of its line. */
  private String rest(Mark start) {
    String line = source.line(start.getLine() + 1, LONGEST_LINE);
    int length = line.codePointCount(0, line.length());
    return line.substring(line.offsetByCodePoints(0, Math.min(start.getColumn(), length))).strip();
  }

  private Finding ofOneToken() {
    if (problem.contains("TAB")) {
      return before().isBlank()
          ? here("a tab is used for indentation", "indent with spaces")
          : here(
              "a tab is used where a space is needed",
              "type a space in place of the tab between a key, its value and a comment");
    }
    if (problem.contains("cannot start any token")) {
      return here("\"" + character() + "\" cannot start a value", "put the value in quotes");
    }
    if (problem.startsWith("found unknown escape character")
        || problem.startsWith("expected escape sequence")) {
      return here(
          "this backslash sequence has no meaning in double quotes",
          "write two backslashes for one, or put the text in single quotes");
    }
    if (problem.startsWith("sequence entries are not allowed")) {
      return here("a list starts on the line of its key", "start it on the next line, indented");
    }
    if (problem.startsWith("mapping keys are not allowed")) {
      return here("a value starts with \"?\" and a space", "put the value in quotes");
    }
    if (problem.startsWith("expected the node content")) {
      String what = found.startsWith("<") ? "nothing" : "\"" + found + "\"";
      return here(what + " is where a value is expected", "write the value, or put it in quotes");
    }
    if (problem.startsWith("expected '<document start>'")) {
      return here(
          "the document cannot start or go on here",
          "delete the line above that starts with % or with three points");
    }
    return ofCharacters();
  }

  private Finding ofCharacters() {
    String line = source.line(mark.getLine() + 1, LONGEST_LINE);
    if (line.startsWith("%")) {
      return here("this line starts with % and cannot be read", "delete the line");
    }
    if (problem.startsWith("unexpected character found")) {
      return here(
          "the anchor or alias has no name", "put the value in quotes if it is meant as text");
    }
    if (problem.startsWith("expected chomping") || problem.startsWith("expected indentation")) {
      return here(
          "text follows the sign that starts text of several lines",
          "write the text on the lines below, indented, or put it in quotes");
    }
    if (reading.contains("tag") || problem.contains("tag handle")) {
      return here("the tag cannot be read", "delete the tag, or put the value in quotes");
    }
    return here(
        "the text cannot be read as YAML from here on",
        "correct the line; quotes, brackets and indentation are the usual causes");
  }

  private String character() {
    String line = source.line(mark.getLine() + 1, LONGEST_LINE);
    int at = Math.min(mark.getColumn(), line.codePointCount(0, line.length()) - 1);
    return at < 0 ? "" : Character.toString(line.codePointAt(line.offsetByCodePoints(0, at)));
  }

  private Optional<Finding> missingSpace() {
    Mark start = context;
    int line = mark.getLine() + 1;
    int suspect = start == null ? MissingSpace.lineAbove(source, line) : start.getLine() + 1;
    return MissingSpace.behindColon(source, suspect);
  }

  private Finding noColon() {
    return at(
        context == null ? mark : context,
        "a key is expected here, but no colon follows this text",
        "write the key, a colon, a space and the value");
  }

  private Finding secondColon() {
    String before = before();
    return before.contains(": ")
        ? here("one value has a second colon with a space after it", "put the value in quotes")
        : missingSpace().orElseGet(this::strayColon);
  }

  /** A colon that cannot belong to a key because of the line above. */
  private Finding strayColon() {
    int above = MissingSpace.lineAbove(source, mark.getLine() + 1);
    if (above == 0) {
      return here("the text before the colon is not a key", "put the value in quotes");
    }
    return VALUE.matcher(source.line(above, LONGEST_LINE)).matches()
        ? here(
            "the line above already has a value, but this key is indented as if it belonged to it",
            "line the keys up, or delete the value above the keys")
        : here(
            "the line above has no colon, or this one is indented too far",
            "line the keys up, and write a colon and a space after each");
  }

  /** The text before the problem on its line. */
  private String before() {
    String line = source.line(mark.getLine() + 1, LONGEST_LINE);
    int length = line.codePointCount(0, line.length());
    return line.substring(0, line.offsetByCodePoints(0, Math.min(mark.getColumn(), length)));
  }

  private Finding outOfBlock() {
    Optional<Finding> hyphen = MissingSpace.behindHyphen(source, mark.getLine() + 1);
    if (hyphen.isPresent()) {
      return hyphen.get();
    }
    if (found.equals("]") || found.equals("}")) {
      return here(
          "\"" + found + "\" closes a bracket that is not open",
          "delete it, or add the opening bracket");
    }
    if (!before().isBlank()) {
      return here(
          "something follows the end of the value",
          "put the whole value in one pair of double quotes");
    }
    return found.equals("-")
        ? here("a list item is among keys", "put the list under a key, or delete the hyphen")
        : here(
            "this line is indented differently from the others of its block",
            "line it up with them");
  }

  private Finding inBrackets(char closing) {
    String what = closing == ']' ? "list" : "mapping";
    Mark start = context;
    if (found.equals("]") || found.equals("}")) {
      return here(
          "the " + what + " is closed with \"" + found + "\"",
          "write " + closing + " in its place");
    }
    if (start != null && (start.getLine() < mark.getLine() || found.equals("<stream end>"))) {
      return at(
          start,
          "the " + what + " between brackets that starts here is not closed",
          "write " + closing + " after its last item");
    }
    return here(
        "a comma is missing before here, or the closing \"" + closing + "\"",
        "write a comma between two items, and " + closing + " after the last");
  }

  private Finding here(String fact, String remedy) {
    Finding finding = at(mark, fact, remedy);
    return context == null
        ? finding
        : finding.related(ParserMarks.at(context), "what is being read starts here");
  }

  private static Finding at(Mark mark, String fact, String remedy) {
    return Finding.of(
        SyntaxFaults.SYNTAX,
        ParserMarks.at(mark),
        new Message(fact, SyntaxFaults.NOT_READ, remedy));
  }
}
