package org.headhouse.linter.change;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.site.CableRun;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * A label of a cable has the names at both of its ends, its number along the chain and its length:
 * one that is laid anew, has another length or another name at an end needs new ones.
 */
final class CableLabels {
  /** Where a cable ends: at an item, or where the branch to it leaves the trunk. */
  private record End(String item, boolean isTap) {
    @Override
    public String toString() {
      return (isTap ? "the tap of " : "") + "\"" + item + "\"";
    }
  }

  private record Run(End from, End to) {
    @Override
    public String toString() {
      return from + " to " + to;
    }
  }

  private final Map<Run, CableRun> before;
  private final Map<Run, CableRun> after;
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
    for (Map.Entry<Run, CableRun> one : after.entrySet()) {
      Run run = one.getKey();
      CableRun was = before.get(earlier(run));
      CableRun is = one.getValue();
      if (was == null || SettingComparison.differ(was.length(), is.length())) {
        anew.add(run.toString());
        laid = true;
      } else if (!before.containsKey(run)) {
        anew.add(run.toString());
      } else {
        shifted |= was.number() != is.number();
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
    return new Run(earlier(run.from()), earlier(run.to()));
  }

  private End earlier(End end) {
    return new End(earlier.getOrDefault(end.item(), end.item()), end.isTap());
  }

  /** With the numbers that the printed labels have. */
  private static Map<Run, CableRun> numbered(Site site) {
    Map<Run, CableRun> runs = new LinkedHashMap<>();
    for (CableRun cable : CableRun.of(site)) {
      End from = end(cable.from());
      End to = cable.isBranch() ? end(cable.to(), false) : end(cable.to());
      if (from != null && to != null) {
        runs.put(new Run(from, to), cable);
      }
    }
    return runs;
  }

  /** The trunk passes an item on a branch at its tap. */
  private static @Nullable End end(ChainItem item) {
    return end(item, !item.connection(Side.IN).stub().isMissing() && !(item instanceof Repeater));
  }

  private static @Nullable End end(ChainItem item, boolean isTap) {
    return item.name().optional().map(name -> new End(name, isTap)).orElse(null);
  }
}
