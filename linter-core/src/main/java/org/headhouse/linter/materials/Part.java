package org.headhouse.linter.materials;

import org.headhouse.linter.site.Side;
import org.jspecify.annotations.Nullable;

/**
 * Material at one place of a line.
 *
 * @param amount metres or pieces; null where the file does not say how much
 * @param words where it is; without an amount, also why it is not counted
 * @param isAbsent whether the file says that it is not there, though the line needs it
 */
record Part(
    Material material,
    String type,
    @Nullable Double amount,
    Spot spot,
    String words,
    boolean isAbsent) {

  /** One of which the file does not say that it is absent. */
  Part(Material material, String type, @Nullable Double amount, Spot spot, String words) {
    this(material, type, amount, spot, words, false);
  }

  /** One that is not there, though the line needs it. */
  static Part absent(Material material, String type, Spot spot, String words) {
    return new Part(material, type, null, spot, words, true);
  }

  /** What a place of a line is. */
  enum Kind {
    RUN,
    STUB,
    ACROSS_THE_PAIR,
    BIAS,
    DEVICE,
    SURGE
  }

  /** Where something is that the file does not say in a way that can be found again. */
  static final int NOWHERE = -1;

  /**
   * A place of a line, at which there is one part or none.
   *
   * @param item its index in the chain
   * @param other the index of the item at the other end of a run, else that of the item itself
   */
  record Spot(Kind kind, int item, int other, Side side) {
    static Spot at(Kind kind, int item) {
      return new Spot(kind, item, item, Side.IN);
    }

    static Spot at(Kind kind, int item, Side side) {
      return new Spot(kind, item, item, side);
    }

    static Spot after(Kind kind, int item) {
      return new Spot(kind, item, item + 1, Side.IN);
    }
  }
}
