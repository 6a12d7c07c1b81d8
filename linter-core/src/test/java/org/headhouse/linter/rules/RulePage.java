package org.headhouse.linter.rules;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page of a rule, taken apart. */
record RulePage(String text) {

  static RulePage of(String id) {
    return new RulePage(
        RulePages.text(id).orElseThrow(() -> new AssertionError("there is no page of " + id)));
  }

  /** What stands between the title and the first section: the requirement. */
  String requirement() {
    int start = text.indexOf('\n');
    return text.substring(start, text.indexOf("\n## ")).strip();
  }

  /** A section, empty where the page lacks it. */
  Section section(String title) {
    String heading = "\n## " + title + "\n";
    int start = text.indexOf(heading);
    if (start < 0) {
      return new Section("");
    }
    int end = text.indexOf("\n## ", start + 1);
    return new Section(text.substring(start + heading.length(), end < 0 ? text.length() : end));
  }

  record Section(String text) {
    /** The text of the block with an info string; empty where there is none. */
    String block(String info) {
      Matcher matcher = Pattern.compile("```" + info + "\n(.*?)```", Pattern.DOTALL).matcher(text);
      return matcher.find() ? matcher.group(1) : "";
    }
  }
}
