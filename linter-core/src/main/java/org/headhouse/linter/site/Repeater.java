package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * A repeater: the end of one segment and the start of the next.
 *
 * @param termination the key {@code termination}, or the repeater where it is missing
 * @param in its connection on the side towards the start of the chain
 * @param out its connection on the far side
 */
public record Repeater(
    ItemIdentity identity,
    Device device,
    Place termination,
    Connection in,
    Connection out,
    TrunkRun toNext)
    implements ChainItem {
  @Internal
  public Repeater {}

  @Override
  public ItemKind kind() {
    return ItemKind.REPEATER;
  }

  @Override
  public Connection connection(Side side) {
    return side == Side.IN ? in : out;
  }

  /** What it connects across the pair on the side towards the start of the chain. */
  public Setting<Termination> terminationIn() {
    return in.termination();
  }

  /** What it connects across the pair on the far side. */
  public Setting<Termination> terminationOut() {
    return out.termination();
  }
}
