package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * Software that lists and polls the units.
 *
 * @param place the key {@code supervision}
 * @param at the converter that it is attached by
 * @param zones the units that it lists, by name
 */
public record Supervision(
    Place place,
    Setting<Link> link,
    Setting<String> at,
    Setting<List<Setting<String>>> zones,
    Setting<Polling> polling) {
  @Internal
  public Supervision {}
}
