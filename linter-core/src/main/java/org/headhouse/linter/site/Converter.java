package org.headhouse.linter.site;

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

  @Override
  public ItemKind kind() {
    return ItemKind.CONVERTER;
  }

  @Override
  public Connection connection(Side side) {
    return connection;
  }
}
