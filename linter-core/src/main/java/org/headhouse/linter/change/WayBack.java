package org.headhouse.linter.change;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What undoes a step, as long as no later one is begun; later ones are undone first.
 *
 * @param first what is changed in the polling before
 * @param step the work, or null where nothing is to be done at the line
 * @param last what is changed in the polling after
 */
public record WayBack(List<PollingChange> first, @Nullable Step step, List<PollingChange> last) {
  public WayBack {
    first = List.copyOf(first);
    last = List.copyOf(last);
  }
}
