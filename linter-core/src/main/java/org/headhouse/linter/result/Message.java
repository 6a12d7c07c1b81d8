package org.headhouse.linter.result;

/**
 * What is told of one fault: the fact with the value quoted, why it matters on the line, and what
 * to do about it.
 *
 * @param fact a clause without a full stop: {@code address 4 is used twice}
 * @param reason a clause without a full stop: {@code both units answer at once}
 * @param remedy an imperative clause without a full stop: {@code give "Potting Shed" address 5}
 */
public record Message(String fact, String reason, String remedy) {

  /** The three parts as one line. */
  public String text() {
    return fact + ": " + reason + "; " + remedy;
  }

  @Override
  public String toString() {
    return text();
  }
}
