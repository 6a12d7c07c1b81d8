package org.headhouse.linter.change;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;

/**
 * A label of a cable has the names at both of its ends, and its number along the chain: one that is
 * laid anew or has another name at an end needs new ones.
 */
final class CableLabels {
  private record Run(String from, String to) {}

  private final Map<Run, Integer> before;
  private final Map<Run, Integer> after;
  private final Map<String, String> earlier = new HashMap<>();

  private CableLabels(Site before, Site after, List<Difference> differences) {
    this.before = numbered(before);
    this.after = numbered(after);
    for (Difference difference : differences) {
      if (difference instanceof Difference.Renamed one) {
        earlier.put(one.item(), one.from());
      }
    }
  }

  /** An imperative sentence without a full stop; empty where all labels can stay. */
  static Optional<String> of(Site before, Site after, List<Difference> differences) {
    return new CableLabels(before, after, differences).text();
  }

  private Optional<String> text() {
    Set<String> anew = new LinkedHashSet<>();
    boolean laid = false;
    boolean shifted = false;
    for (Map.Entry<Run, Integer> one : after.entrySet()) {
      Run run = one.getKey();
      Integer was = before.get(earlier(run));
      if (was == null || !before.containsKey(run)) {
        anew.add("\"" + run.from() + "\" to \"" + run.to() + "\"");
        laid |= was == null;
      } else {
        shifted |= !was.equals(one.getValue());
      }
    }
    if (anew.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "label these cables anew at both ends"
            + (laid ? ", and correct the drawings of the wiring" : "")
            + ": "
            + String.join(", ", anew)
            + (shifted ? "; other cables get another number, so print their labels too" : ""));
  }

  private Run earlier(Run run) {
    return new Run(
        earlier.getOrDefault(run.from(), run.from()), earlier.getOrDefault(run.to(), run.to()));
  }

  /** As the sheets count: the cable of a branch has a number of its own. */
  private static Map<Run, Integer> numbered(Site site) {
    Map<Run, Integer> runs = new LinkedHashMap<>();
    List<ChainItem> items = site.items();
    int number = 0;
    for (int i = 0; i < items.size(); i++) {
      number += items.get(i).connection(Side.IN).stub().isMissing() ? 0 : 1;
      String from = items.get(i).name().orNull();
      String to = i + 1 == items.size() ? null : items.get(i + 1).name().orNull();
      number++;
      if (from != null && to != null) {
        runs.put(new Run(from, to), number);
      }
    }
    return runs;
  }
}
