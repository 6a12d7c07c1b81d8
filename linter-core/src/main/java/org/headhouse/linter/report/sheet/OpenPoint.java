package org.headhouse.linter.report.sheet;

import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.ChainItem;

/**
 * What is still wrong with what a row or a card says.
 *
 * @param level of the result, in a word
 * @param fact in plain words, as the results have it
 * @param rule the id of the rule that is broken
 */
record OpenPoint(String level, String fact, String rule) {
  static OpenPoint of(Result result) {
    return of(result, result.message().fact());
  }

  /** Beside the name of an item, which it need not repeat. */
  static OpenPoint of(Result result, ChainItem item) {
    String fact =
        result
            .message()
            .fact()
            .replace("the name " + item.called(), "its name")
            .replace(item.called(), "this " + item.kind().word());
    return of(result, fact);
  }

  private static OpenPoint of(Result result, String fact) {
    return new OpenPoint(result.level().word(), PlainText.sentence(fact), result.rule());
  }
}
