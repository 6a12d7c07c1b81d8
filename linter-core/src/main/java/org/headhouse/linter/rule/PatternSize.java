package org.headhouse.linter.rule;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * The size of a regular expression once its counted repetitions are written out, found without
 * compiling it: {@code ((a{1000}){1000}){1000}} would take all memory.
 *
 * <p>It counts the characters, and errs on the large side. A text that is no regular expression has
 * a size too; compiling it finds the fault.
 */
final class PatternSize {
  private static final long MOST = Integer.MAX_VALUE;

  private final String text;
  private int at;

  /** What is in front of each group that is open. */
  private final Deque<Long> outer = new ArrayDeque<>();

  private long sum;
  private long last;

  private PatternSize(String text) {
    this.text = text;
  }

  static long of(String text) {
    PatternSize size = new PatternSize(text);
    while (size.at < text.length()) {
      size.step();
    }
    return size.total();
  }

  private long total() {
    long total = sum + last;
    for (long before : outer) {
      total += before;
    }
    return Math.min(MOST, total);
  }

  private void step() {
    char c = text.charAt(at);
    switch (c) {
      case '(' -> {
        push();
        outer.push(sum);
        sum = 1;
      }
      case ')' -> {
        push();
        last = sum + 1;
        sum = outer.isEmpty() ? 0 : outer.pop();
      }
      case '\\' -> {
        atom();
        escape();
      }
      case '[' -> {
        atom();
        at = endOfClass();
      }
      case '{' -> repetition();
      default -> atom();
    }
    at++;
  }

  private void push() {
    sum = Math.min(MOST, sum + last);
    last = 0;
  }

  private void atom() {
    push();
    last = 1;
  }

  /** Steps on the last character of an escape: {@code \d}, {@code \p{Greek}}, {@code \Q...\E}. */
  private void escape() {
    at++;
    if (at >= text.length()) {
      return;
    }
    char kind = text.charAt(at);
    if (kind == 'Q') {
      int end = text.indexOf("\\E", at);
      last = end < 0 ? text.length() - at : end - at;
      at = end < 0 ? text.length() : end + 1;
    } else if ("pPx".indexOf(kind) >= 0 && text.startsWith("{", at + 1)) {
      int end = text.indexOf('}', at);
      at = end < 0 ? text.length() : end;
    }
  }

  /**
   * The bracket that ends a class, by the rules of RE2: a first one is a character of the class.
   */
  private int endOfClass() {
    int i = at + 1;
    i = text.startsWith("^", i) ? i + 1 : i;
    boolean first = true;
    while (i < text.length() && (first || text.charAt(i) != ']')) {
      int named = text.startsWith("[:", i) ? text.indexOf(":]", i + 2) : -1;
      if (named >= 0) {
        i = named + 2;
      } else {
        i += text.charAt(i) == '\\' ? 2 : 1;
      }
      first = false;
    }
    return i;
  }

  private void repetition() {
    int end = text.indexOf('}', at);
    long times = end < 0 ? 0 : times(text.substring(at + 1, end));
    if (times > 0) {
      last = Math.min(MOST, Math.max(1, last) * times);
      at = end;
    } else {
      atom();
    }
  }

  /** How often the character before is written out; 0 for what is no repetition. */
  private static long times(String braces) {
    if (!braces.matches("[0-9]{1,9}(,[0-9]{0,9})?")) {
      return 0;
    }
    String[] numbers = braces.split(",", -1);
    String most = numbers[numbers.length - 1];
    return 1 + Long.parseLong(most.isEmpty() ? numbers[0] : most);
  }
}
