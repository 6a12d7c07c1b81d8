package org.headhouse.linter.result;

/**
 * A result that the baseline knows and that is not there any more.
 *
 * @param file the site's file as it is called in results
 * @param times how often it was there, over how often it is now
 */
public record AbsentResult(String rule, String file, Identity identity, int times) {

  /** Where it was, and with what value. */
  public String text() {
    return file
        + ": "
        + identity.at()
        + (identity.unit() == null ? "" : " of \"" + identity.unit() + "\"")
        + (identity.value() == null ? "" : ": " + identity.value())
        + (identity.detail() == null ? "" : ": " + identity.detail())
        + " ["
        + rule
        + "]"
        + (times == 1 ? "" : ", " + times + " times");
  }
}
