package org.headhouse.linter.change;

import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The items of a site that had another name in an earlier state of it.
 *
 * <p>One whose old name is in use, or that is another device by its type or its serial number, is
 * none: two different units are never taken for one.
 */
@Internal
public final class Renamings {
  private final Map<String, Renaming> byOldName = new HashMap<>();

  /**
   * One of them.
   *
   * @param from the old name
   * @param to the new name
   * @param item as it is now
   * @param certain whether it has its place between the same neighbours, and, of what has one, its
   *     address; else it may be another
   */
  public record Renaming(String from, String to, ChainItem item, boolean certain) {}

  private Renamings() {}

  /** All of them. */
  public static Renamings between(Site before, Site after) {
    Renamings renamings = new Renamings();
    List<TrackedItem> items = ItemMatcher.of(before, after);
    Neighbours neighbours = new Neighbours(before, after, items);
    Set<String> used = new HashSet<>();
    after.items().forEach(item -> item.name().optional().ifPresent(used::add));
    for (TrackedItem item : items) {
      ChainItem was = item.before();
      ChainItem is = item.after();
      String from = was == null ? null : was.name().orNull();
      String to = is == null ? null : is.name().orNull();
      if (was != null
          && is != null
          && from != null
          && to != null
          && !used.contains(from)
          && mayBeOne(was, is)) {
        boolean certain = neighbours.areSame(item) && hasSameAddress(was, is);
        // Of two earlier items of one name, nobody can tell which is meant.
        Renaming other = renamings.byOldName.put(from, new Renaming(from, to, is, certain));
        if (other != null) {
          renamings.byOldName.put(from, new Renaming(from, to, is, false));
        }
      }
    }
    return renamings;
  }

  /** The item that had a name, or null where none had it that has another now. */
  public @Nullable Renaming of(String name) {
    return byOldName.get(name);
  }

  /** Whether nothing says that they are two devices. */
  private static boolean mayBeOne(ChainItem was, ChainItem is) {
    return was.kind() == is.kind()
        && mayBeEqual(was.deviceType(), is.deviceType())
        && mayBeEqual(was.device().serialNumber(), is.device().serialNumber())
        && (!(was instanceof Unit unit)
            || !(is instanceof Unit other)
            || unit.isHead() == other.isHead());
  }

  private static boolean mayBeEqual(Setting<String> one, Setting<String> other) {
    return !one.isGiven() || !other.isGiven() || one.is(other.or(""));
  }

  /** What has no address at all, such as a repeater, is known by its place. */
  private static boolean hasSameAddress(ChainItem was, ChainItem is) {
    if (was.address().isMissing() && is.address().isMissing()) {
      return !(was instanceof Unit);
    }
    return was.address().isGiven() && is.address().is(was.address().or(0));
  }

  /** What is next to an item on the chain, in both states. */
  private static final class Neighbours {
    private final IdentityHashMap<ChainItem, TrackedItem> tracked = new IdentityHashMap<>();
    private final IdentityHashMap<ChainItem, Integer> places = new IdentityHashMap<>();
    private final List<ChainItem> before;
    private final List<ChainItem> after;

    Neighbours(Site before, Site after, List<TrackedItem> items) {
      this.before = before.items();
      this.after = after.items();
      items.forEach(
          item -> {
            track(item.before(), item);
            track(item.after(), item);
          });
      place(this.before);
      place(this.after);
    }

    private void track(@Nullable ChainItem one, TrackedItem item) {
      if (one != null) {
        tracked.put(one, item);
      }
    }

    private void place(List<ChainItem> chain) {
      for (int i = 0; i < chain.size(); i++) {
        places.put(chain.get(i), i);
      }
    }

    boolean areSame(TrackedItem item) {
      return isSame(item, -1) && isSame(item, 1);
    }

    private boolean isSame(TrackedItem item, int step) {
      return at(before, item.before(), step) == at(after, item.after(), step);
    }

    /** The item there, or null beyond an end. */
    private @Nullable TrackedItem at(List<ChainItem> chain, @Nullable ChainItem one, int step) {
      Integer place = one == null ? null : places.get(one);
      int next = place == null ? -1 : place + step;
      return next < 0 || next >= chain.size() ? null : tracked.get(chain.get(next));
    }
  }
}
