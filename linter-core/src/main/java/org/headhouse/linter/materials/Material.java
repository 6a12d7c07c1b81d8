package org.headhouse.linter.materials;

import org.headhouse.linter.site.Word;

/** The kinds of material that are counted. */
public enum Material implements Word {
  CABLE("cable"),
  TERMINATOR("terminator"),
  BIAS_RESISTOR("bias-resistor"),
  COMM_MODULE("comm-module"),
  SURGE_PROTECTOR("surge-protector"),
  REPEATER("repeater"),
  CONVERTER("converter");

  private final String word;

  Material(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** Whether it is a length, in metres, and not a number of pieces. */
  public boolean isLength() {
    return this == CABLE;
  }
}
