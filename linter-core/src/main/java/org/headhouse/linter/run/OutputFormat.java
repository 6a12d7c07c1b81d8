package org.headhouse.linter.run;

/** A form in which results are given to people or to programs. */
public enum OutputFormat {
  /** Lines for people. */
  TEXT("text"),
  /** Lines for people, and the same results as annotations of GitHub. */
  GITHUB("github"),
  /** The code quality report of GitLab. */
  GITLAB("gitlab"),
  /** An object of JSON on each line. */
  JSON("json");

  private final String word;

  OutputFormat(String word) {
    this.word = word;
  }

  /** How users write it. */
  public String word() {
    return word;
  }
}
