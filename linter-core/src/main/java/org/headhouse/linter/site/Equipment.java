package org.headhouse.linter.site;

import org.headhouse.linter.stability.Internal;

/**
 * Another Modbus device on the pair that is no climate controller: a meter, a dosing rig, a boiler.
 *
 * @param address taken on the line, like that of a unit
 * @param broadcasts what it does with broadcasts; missing where nobody knows
 * @param polled how it is asked; missing where nobody asks it
 */
public record Equipment(
    ItemIdentity identity,
    Device device,
    Connection connection,
    TrunkRun toNext,
    Setting<Integer> address,
    Setting<BroadcastHandling> broadcasts,
    Setting<Polled> polled)
    implements ChainItem {
  @Internal
  public Equipment {}

  @Override
  public ItemKind kind() {
    return ItemKind.EQUIPMENT;
  }

  @Override
  public Connection connection(Side side) {
    return connection;
  }
}
