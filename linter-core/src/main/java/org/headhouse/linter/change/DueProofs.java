package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.RequiredProofs;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * Finds what has to be proved again after a change, and nothing else, so that nobody is tempted to
 * copy an old record: common practice, no source.
 */
@Internal
public final class DueProofs {
  private static final Set<String> OF_VENTS =
      Set.of("vents", "on-stale-readings", "stale-after", "close-time");
  private static final Set<String> OF_DEVICE = Set.of("device-type", "serial-number");

  private final Site after;
  private final Set<String> units = new HashSet<>();
  private final Set<String> vents = new HashSet<>();
  private final Set<Proof> others = new HashSet<>();

  private DueProofs(Site after) {
    this.after = after;
  }

  /**
   * What is due, in the order of {@link RequiredProofs}.
   *
   * @param differences all between an earlier state and this one
   */
  public static List<Proof> of(Site after, List<Difference> differences) {
    Set<Proof> required = RequiredProofs.of(after);
    if (concernsAll(after, differences)) {
      return List.copyOf(required);
    }
    DueProofs due = new DueProofs(after);
    differences.stream().filter(ReprovingCheck::concerns).forEach(due::add);
    return required.stream().filter(due::contains).toList();
  }

  /** Whether the whole line has to be proved again. */
  public static boolean concernsAll(Site after, List<Difference> differences) {
    return differences.stream()
        .filter(ReprovingCheck::concerns)
        .anyMatch(difference -> concernsAll(after, difference));
  }

  /** Rate, cable, broadcast, station or head unit; and a repeater, which divides the line anew. */
  private static boolean concernsAll(Site after, Difference difference) {
    if (difference instanceof Difference.SiteSet site) {
      return ReprovingCheck.isStation(site.setting().what());
    }
    if (difference instanceof Difference.Added added) {
      return added.kind() == ItemKind.REPEATER || isHead(after, added.item());
    }
    if (difference instanceof Difference.Removed removed) {
      return removed.kind() == ItemKind.REPEATER;
    }
    if (difference instanceof Difference.Exchanged exchanged) {
      return isHead(after, exchanged.item());
    }
    if (difference instanceof Difference.ItemSet set) {
      return isHead(after, set.item()) && !OF_VENTS.contains(set.setting().what());
    }
    if (difference instanceof Difference.Readdressed set) {
      return isHead(after, set.item());
    }
    if (difference instanceof Difference.Resourced set) {
      return isHead(after, set.item());
    }
    if (difference instanceof Difference.TypeSet set) {
      Unit head = after.head();
      return head != null && TypeFacts.items(after, set).contains(head);
    }
    return difference instanceof Difference.LineSet || difference instanceof Difference.RoleChanged;
  }

  private static boolean isHead(Site site, String item) {
    Unit head = site.head();
    return head != null && head.name().is(item);
  }

  private void add(Difference difference) {
    if (difference instanceof Difference.Added added) {
      wired(added.item());
      neighbours(added.item());
    } else if (difference instanceof Difference.Exchanged exchanged) {
      // Its neighbours keep their cables.
      wired(exchanged.item());
    } else if (difference instanceof Difference.Rewired rewired) {
      rewired(rewired.item(), rewired.wiring());
    } else if (difference instanceof Difference.Terminated terminated) {
      loaded(terminated.item());
    } else if (difference instanceof Difference.Rebiased rebiased) {
      loaded(rebiased.item());
    } else if (difference instanceof Difference.Readdressed readdressed) {
      units.add(readdressed.item());
    } else if (difference instanceof Difference.Resourced resourced) {
      units.add(resourced.item());
    } else if (difference instanceof Difference.ItemSet set) {
      set(set.item(), set.setting().what());
    } else if (difference instanceof Difference.TypeSet set) {
      TypeFacts.items(after, set)
          .forEach(item -> item.name().optional().ifPresent(name -> ofType(name, set)));
    } else if (difference instanceof Difference.SiteSet) {
      // What is left of them is the polling, which takes time from the readings of all.
      others.addAll(RequiredProofs.readings(after));
    }
  }

  private void set(String item, String what) {
    if (OF_VENTS.contains(what)) {
      vents.add(item);
    } else if (OF_DEVICE.contains(what)) {
      wired(item);
    } else if (what.startsWith("polled.")) {
      others.addAll(RequiredProofs.readings(after));
    } else {
      units.add(item);
    }
  }

  private void ofType(String item, Difference.TypeSet fact) {
    if (TypeFacts.isLoad(fact)) {
      loaded(item);
    } else {
      wired(item);
    }
  }

  /** A unit, and where its segment is measured. */
  private void wired(String item) {
    units.add(item);
    for (Segment segment : segments(item)) {
      List<Proof> measured = RequiredProofs.measurements(segment, after);
      String first = measured.isEmpty() ? "" : measured.get(0).at();
      measured.stream().filter(one -> one.at().equals(first)).forEach(others::add);
    }
  }

  /**
   * A unit where something across the pair changes, and every place where its segment is measured.
   */
  private void loaded(String item) {
    units.add(item);
    segments(item).forEach(it -> others.addAll(RequiredProofs.measurements(it, after)));
  }

  private void rewired(String item, ValueChange wiring) {
    boolean sameNeighbour =
        wiring.what().endsWith(" item") && Objects.equals(wiring.from(), wiring.to());
    if (!sameNeighbour) {
      wired(item);
    }
    if (wiring.what().endsWith("-to-next")) {
      ChainItem next = item(index(item) + 1);
      if (next != null) {
        next.name().optional().ifPresent(this::wired);
      }
    }
  }

  /** The units next to a new item, whatever is between. */
  private void neighbours(String item) {
    int at = index(item);
    for (int step : new int[] {-1, 1}) {
      int i = at + step;
      while (item(i) != null && !(item(i) instanceof Unit)) {
        i += step;
      }
      ChainItem neighbour = item(i);
      if (neighbour != null) {
        neighbour.name().optional().ifPresent(units::add);
      }
    }
  }

  private int index(String item) {
    return after.items().stream()
        .filter(it -> it.name().is(item))
        .mapToInt(ChainItem::index)
        .findFirst()
        .orElse(Integer.MIN_VALUE);
  }

  private @Nullable ChainItem item(int index) {
    return index < 0 || index >= after.items().size() ? null : after.items().get(index);
  }

  private List<Segment> segments(String item) {
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : after.segments()) {
      if (segment.items().stream().anyMatch(it -> it.name().is(item))) {
        segments.add(segment);
      }
    }
    return segments;
  }

  private boolean contains(Proof proof) {
    if (proof.kind().isMeasured()) {
      return others.contains(proof);
    }
    return units.contains(proof.at())
        || others.contains(proof)
        || (proof.kind() != Proof.Kind.READINGS && vents.contains(proof.at()));
  }
}
