package org.headhouse.linter.change;

/**
 * What else a change touches.
 *
 * @param text an imperative sentence without a full stop
 */
public record Consequence(Kind kind, String text) {

  /** What is touched. */
  public enum Kind {
    SUPERVISION("supervision"),
    RECORD("record"),
    LABELS("labels"),
    SUPPRESSION("suppression");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** One word, for machines. */
    public String word() {
      return word;
    }
  }
}
