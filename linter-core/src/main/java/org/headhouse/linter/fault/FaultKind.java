package org.headhouse.linter.fault;

/** What may be wrong with one segment. */
public enum FaultKind {
  TERMINATOR_MISSING("terminator-missing"),
  TERMINATOR_EXTRA("terminator-extra"),
  TERMINATOR_VALUE("terminator-value"),
  CONDUCTOR_OPEN("conductor-open"),
  PAIR_SHORTED("pair-shorted"),
  CONDUCTORS_SWAPPED("conductors-swapped"),
  BIAS_MISSING("bias-missing"),
  BIAS_HALF("bias-half"),
  BIAS_EXTRA("bias-extra"),
  BIAS_REVERSED("bias-reversed"),
  UNIT_UNPOWERED("unit-unpowered"),
  COMMON_OPEN("common-open");

  private final String word;

  FaultKind(String word) {
    this.word = word;
  }

  /** The word as files and reports have it. */
  public String word() {
    return word;
  }
}
