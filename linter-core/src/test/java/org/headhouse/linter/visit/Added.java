package org.headhouse.linter.visit;

import static org.assertj.core.api.Assertions.assertThat;

/** What a text has that another lacks, as one piece. */
final class Added {
  private Added() {}

  /** The piece by which the text before became the one after. */
  static String of(String before, String after) {
    int start = 0;
    while (start < before.length() && before.charAt(start) == after.charAt(start)) {
      start++;
    }
    int rest = before.length() - start;
    assertThat(after).startsWith(before.substring(0, start)).endsWith(before.substring(start));
    assertThat(after.length() - rest).isGreaterThanOrEqualTo(start);
    // A piece of whole lines begins where one does: lines before and after it may be alike.
    int end = after.length() - rest;
    while (start > 0
        && start != end
        && after.charAt(start - 1) != '\n'
        && after.charAt(start - 1) == after.charAt(end - 1)) {
      start--;
      end--;
    }
    return after.substring(start, end);
  }
}
