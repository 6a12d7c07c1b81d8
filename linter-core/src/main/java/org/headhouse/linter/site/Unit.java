package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.stability.Internal;

/** One controller on the chain. */
public record Unit(
    ItemIdentity identity,
    Device device,
    Connection connection,
    TrunkRun toNext,
    Setting<Role> role,
    Setting<Integer> address,
    Setting<String> firmware,
    Setting<CommModule> commModule,
    VentControl ventControl,
    Setting<Network> network)
    implements ChainItem {
  @Internal
  public Unit {}

  @Override
  public ItemKind kind() {
    return ItemKind.UNIT;
  }

  @Override
  public Connection connection(Side side) {
    return connection;
  }

  /** Whether it is a head unit. */
  public boolean isHead() {
    return role.is(Role.HEAD);
  }

  /** Whether it is a follower. */
  public boolean isFollower() {
    return role.is(Role.FOLLOWER);
  }

  /** What is landed on its line terminals. */
  public Setting<List<Setting<Conductor>>> conductors() {
    return connection.conductors();
  }

  /** What it connects across the pair. */
  public Setting<Termination> termination() {
    return connection.termination();
  }

  /** Whether D1 and D0 are landed straight or crossed. */
  public Setting<Pair> pair() {
    return connection.pair();
  }

  /** The length of the branch that it hangs on; missing where it is on the trunk itself. */
  public Setting<Length> stub() {
    return connection.stub();
  }

  /** Where it takes the outdoor readings from. */
  public Setting<Outdoor> outdoor() {
    return ventControl.outdoor();
  }

  /** The vents that it moves. */
  public Setting<Vents> vents() {
    return ventControl.vents();
  }

  /** What it does with its vents once no reading has come for too long. */
  public Setting<StaleAction> onStaleReadings() {
    return ventControl.onStaleReadings();
  }

  /** How long it goes on with a reading that does not come anew. */
  public Setting<Interval> staleAfter() {
    return ventControl.staleAfter();
  }

  /** From a reading over the limit until its slowest vent is shut. */
  public Setting<Interval> closeTime() {
    return ventControl.closeTime();
  }
}
