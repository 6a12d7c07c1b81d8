package org.headhouse.linter.change;

import java.util.List;
import org.headhouse.linter.stability.Internal;

/**
 * A step of the field work, with all that keeps it from doing harm.
 *
 * @param work what is done
 * @param pollingFirst what is changed in the polling before
 * @param withoutReadings the units that may miss the outdoor readings meanwhile
 * @param ventsStill the units whose vents nothing moves meanwhile, since their supply is off
 * @param pollingLast what is changed in the polling after all checks
 * @param checks what has to be seen before the next step
 */
public record PlannedStep(
    Step work,
    List<PollingChange> pollingFirst,
    List<String> withoutReadings,
    List<String> ventsStill,
    List<PollingChange> pollingLast,
    List<Check> checks,
    WayBack wayBack) {
  @Internal
  public PlannedStep {
    pollingFirst = List.copyOf(pollingFirst);
    withoutReadings = List.copyOf(withoutReadings);
    ventsStill = List.copyOf(ventsStill);
    pollingLast = List.copyOf(pollingLast);
    checks = List.copyOf(checks);
  }
}
