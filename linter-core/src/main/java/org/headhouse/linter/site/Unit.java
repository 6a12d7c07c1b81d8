package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.source.Place;

/**
 * One controller on the chain.
 *
 * @param deviceType the id of its type, as it is written
 * @param type what is known of that type; {@link DeviceType#UNKNOWN} where nothing is
 * @param conductors what is landed on its line terminals
 * @param stub the length of the branch that it hangs on; missing where it is on the trunk itself
 */
public record Unit(
    Place place,
    int index,
    Setting<String> name,
    Setting<Role> role,
    Setting<Integer> address,
    Setting<String> deviceType,
    DeviceType type,
    Setting<String> firmware,
    Setting<CommModule> commModule,
    Setting<List<Setting<Conductor>>> conductors,
    Setting<Termination> termination,
    Setting<Outdoor> outdoor,
    Setting<Vents> vents,
    Setting<StaleAction> onStaleReadings,
    Setting<Pair> pair,
    Setting<Length> stub,
    Setting<Network> network,
    Setting<Length> cableToNext,
    Setting<Run> runToNext,
    Setting<SurgeProtection> surgeProtectionToNext)
    implements ChainItem {

  /** Whether it is a head unit. */
  public boolean isHead() {
    return role.is(Role.HEAD);
  }

  /** Whether it is a follower. */
  public boolean isFollower() {
    return role.is(Role.FOLLOWER);
  }
}
