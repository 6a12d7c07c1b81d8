package org.headhouse.linter.fault;

/**
 * What is measured, and where.
 *
 * @param quantity what the meter shows
 * @param item the index of the item at whose terminals it is held
 */
public record Measurement(Quantity quantity, int item) {

  /** What people measure on a pair. */
  public enum Quantity {
    /** Between D1 and D0, all supplies off. */
    PAIR_RESISTANCE("pair-resistance"),
    /** The same with the chain opened at the item, towards its start. */
    RESISTANCE_TOWARD_HEAD("pair-resistance"),
    /** The same with the chain opened at the item, away from its start. */
    RESISTANCE_TOWARD_END("pair-resistance"),
    /** Between D1 and D0, the far end shorted, terminators off, supplies off. */
    LOOP_RESISTANCE("loop-resistance"),
    /** D1 − D0 while nobody sends. */
    IDLE_VOLTAGE("idle-voltage"),
    /** D1 against common while nobody sends. */
    D1_VOLTAGE("d1-voltage"),
    /** D0 against common while nobody sends. */
    D0_VOLTAGE("d0-voltage");

    private final String word;

    Quantity(String word) {
      this.word = word;
    }

    /** The key under which a file has such a reading. */
    public String word() {
      return word;
    }

    /** Whether all supplies are off. */
    public boolean isResistance() {
      return compareTo(IDLE_VOLTAGE) < 0;
    }

    /** Whether the chain is opened for it. */
    public boolean opensChain() {
      return this == RESISTANCE_TOWARD_HEAD || this == RESISTANCE_TOWARD_END;
    }
  }
}
