package org.headhouse.linter.site;

import java.time.LocalDate;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * That the results of a rule are accepted on purpose.
 *
 * @param place the entry as a whole
 * @param unit the unit whose results are meant; missing for the whole site
 * @param until the last day on which they are accepted; missing for always
 */
public record SuppressionEntry(
    Place place,
    Setting<String> rule,
    Setting<String> unit,
    Setting<String> justification,
    Setting<LocalDate> until) {
  @Internal
  public SuppressionEntry {}

  /**
   * Whether results of a rule are accepted on a day.
   *
   * @param item the item of the chain that they are about, or null for the whole site
   */
  public boolean accepts(String ruleId, @Nullable String item, LocalDate today) {
    LocalDate last = until.orNull();
    return rule.is(ruleId)
        && justification.isGiven()
        && (until.isMissing() || (last != null && !last.isBefore(today)))
        && (unit.isMissing() || (item != null && unit.is(item)));
  }
}
