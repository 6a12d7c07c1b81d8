package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * Finds the items of one state of a site in the other: by name, then units by address at the same
 * place, then an item that alone is left between the same neighbours.
 *
 * <p>A device of another type, or with another serial number, is another device. Under the same
 * name and between the same items it is exchanged for the earlier one; elsewhere it is new. So is
 * one of another name at another place, whatever its address: a new house may have taken one that
 * became free.
 */
@Internal
public final class ItemMatcher {
  private static final int NONE = -1;

  private final List<ChainItem> before;
  private final List<ChainItem> after;
  private final int[] earlier; // of each later item
  private final int[] later; // of each earlier item

  private ItemMatcher(Site before, Site after) {
    this.before = before.items();
    this.after = after.items();
    this.earlier = new int[this.after.size()];
    this.later = new int[this.before.size()];
    Arrays.fill(earlier, NONE);
    Arrays.fill(later, NONE);
  }

  /** All items of both states, along the later chain; one that left stands where it was. */
  public static List<TrackedItem> of(Site before, Site after) {
    ItemMatcher items = new ItemMatcher(before, after);
    items.match((b, a) -> sameName(items.before.get(b), items.after.get(a)));
    items.matchExchanged();
    items.match(
        (b, a) -> sameAddress(items.before.get(b), items.after.get(a)) && items.isSamePlace(b, a));
    items.matchByPlace();
    return items.merged();
  }

  private interface Likeness {
    boolean of(int before, int after);
  }

  private void match(Likeness likeness) {
    for (int a = 0; a < earlier.length; a++) {
      for (int b = 0; b < later.length && earlier[a] == NONE; b++) {
        if (later[b] == NONE && mayBeOne(before.get(b), after.get(a)) && likeness.of(b, a)) {
          match(b, a);
        }
      }
    }
  }

  private void match(int b, int a) {
    earlier[a] = b;
    later[b] = a;
  }

  private static boolean mayBeOne(ChainItem before, ChainItem after) {
    return before.kind() == after.kind() && !TrackedItem.isAnotherDevice(before, after);
  }

  private void matchExchanged() {
    for (int a = 0; a < earlier.length; a++) {
      for (int b = 0; b < later.length && earlier[a] == NONE; b++) {
        if (later[b] == NONE
            && before.get(b).kind() == after.get(a).kind()
            && sameName(before.get(b), after.get(a))
            && isSamePlace(b, a)) {
          match(b, a);
        }
      }
    }
  }

  /** Whether the nearest items that stay, on either side, are the nearest in both states. */
  private boolean isSamePlace(int b, int a) {
    return stays(b, -1, a) && stays(b, 1, a);
  }

  private boolean stays(int b, int step, int a) {
    for (int i = b + step; i >= 0 && i < later.length; i += step) {
      if (later[i] != NONE) {
        return step < 0 ? later[i] < a : later[i] > a;
      }
    }
    return true;
  }

  private static boolean sameName(ChainItem before, ChainItem after) {
    return before.name().isGiven() && Objects.equals(before.name().orNull(), after.name().orNull());
  }

  private static boolean sameAddress(ChainItem before, ChainItem after) {
    return before instanceof Unit unit
        && after instanceof Unit other
        && unit.address().isGiven()
        && Objects.equals(unit.address().orNull(), other.address().orNull());
  }

  private void matchByPlace() {
    for (int a = 0; a < earlier.length; a++) {
      int b = a == 0 ? 0 : earlier[a - 1] + 1;
      if (earlier[a] != NONE || (a > 0 && b == 0) || b >= later.length || later[b] != NONE) {
        continue;
      }
      int nextBefore = a + 1 == earlier.length ? later.length : earlier[a + 1];
      if (nextBefore == b + 1 && mayBeOneByPlace(before.get(b), after.get(a))) {
        match(b, a);
      }
    }
  }

  /** Another name and another address: then at least type and role have to be the same. */
  private static boolean mayBeOneByPlace(ChainItem before, ChainItem after) {
    if (before instanceof Unit unit && after instanceof Unit other) {
      return mayBeOne(unit, other)
          && unit.deviceType().isGiven()
          && unit.role().isGiven()
          && other.deviceType().isGiven()
          && unit.role().orNull() == other.role().orNull();
    }
    return mayBeOne(before, after);
  }

  private List<TrackedItem> merged() {
    List<TrackedItem> merged = new ArrayList<>();
    TrackedItem[] ofBefore = new TrackedItem[later.length];
    for (int a = 0; a < earlier.length; a++) {
      TrackedItem item =
          new TrackedItem(earlier[a] == NONE ? null : before.get(earlier[a]), after.get(a));
      merged.add(item);
      if (earlier[a] != NONE) {
        ofBefore[earlier[a]] = item;
      }
    }
    @Nullable TrackedItem previous = null;
    for (int b = 0; b < later.length; b++) {
      if (later[b] == NONE) {
        ofBefore[b] = new TrackedItem(before.get(b), null);
        merged.add(previous == null ? 0 : merged.indexOf(previous) + 1, ofBefore[b]);
      }
      previous = ofBefore[b];
    }
    return List.copyOf(merged);
  }
}
