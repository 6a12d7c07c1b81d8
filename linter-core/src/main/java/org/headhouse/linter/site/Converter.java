package org.headhouse.linter.site;

import org.headhouse.linter.stability.Internal;

/**
 * The interface with which supervising software is attached to the pair.
 *
 * @param latency what it adds to each answer
 */
public record Converter(
    ItemIdentity identity,
    Device device,
    Connection connection,
    TrunkRun toNext,
    Setting<Interval> latency)
    implements ChainItem {
  @Internal
  public Converter {}

  @Override
  public ItemKind kind() {
    return ItemKind.CONVERTER;
  }

  @Override
  public Connection connection(Side side) {
    return connection;
  }
}
