package org.headhouse.linter.result;

import java.io.Serializable;
import java.util.Objects;

/**
 * What is reported of one fault: the fact with the value quoted, why it matters on the line, and
 * what to do about it.
 *
 * @param fact a clause without a full stop: {@code address 4 is used twice}
 * @param reason a clause without a full stop: {@code both units answer at once}
 * @param remedy an imperative clause without a full stop: {@code give "Potting Shed" address 5}
 */
public record Message(String fact, String reason, String remedy) implements Serializable {

  /** Rules of other jars may be compiled without a check of nulls. */
  public Message {
    Objects.requireNonNull(fact, "a message without a fact");
    Objects.requireNonNull(reason, "a message without a reason");
    Objects.requireNonNull(remedy, "a message without a remedy");
  }

  /** The three parts as one line. */
  public String text() {
    return fact + ": " + reason + "; " + remedy;
  }

  @Override
  public String toString() {
    return text();
  }
}
