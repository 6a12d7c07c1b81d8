package org.headhouse.linter.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.materials.MaterialChange;
import org.headhouse.linter.site.AddressHole;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Compares two states of a site. */
@Internal
public final class SiteComparison {
  private SiteComparison() {}

  /**
   * All that differs, and the work that leads from one state to the other.
   *
   * @param keptFree addresses that no step uses; nor does one use what the site holds for a unit
   *     that is to come, also where the day until which it does is over
   */
  public static SiteChange.Changed of(Site before, Site after, ExcludedAddresses keptFree) {
    List<TrackedItem> items = ItemMatcher.of(before, after);
    ExcludedAddresses others =
        keptFree.and(before.addressesOfEquipment()).and(after.addressesOfEquipment());
    ExcludedAddresses excluded = others.and(AddressHole.held(after, others, LocalDate.MIN));
    List<Difference> differences = SiteDifferences.between(before, after, items);
    FieldWork work = work(before, after, items, differences, excluded);
    return new SiteChange.Changed(
        id(after),
        after.source().path(),
        before.source().path(),
        differences,
        work,
        ConsequenceFinder.of(before, after, differences, work instanceof FieldWork.Plan),
        work instanceof FieldWork.Plan ? materials(before, after, items) : MaterialChange.NONE);
  }

  private static MaterialChange materials(Site before, Site after, List<TrackedItem> items) {
    Map<Integer, Integer> laterOf = new HashMap<>();
    Set<Integer> exchanged = new HashSet<>();
    for (TrackedItem item : items) {
      if (item.before() != null && item.after() != null) {
        laterOf.put(item.before().index(), item.after().index());
        if (item.isExchanged()) {
          exchanged.add(item.after().index());
        }
      }
    }
    return MaterialChange.between(before, after, laterOf, exchanged);
  }

  /** The id of a site, or the path of its file where it has none. */
  public static String id(Site site) {
    return site.id().optional().orElse(site.source().path());
  }

  private static FieldWork work(
      Site before,
      Site after,
      List<TrackedItem> items,
      List<Difference> differences,
      ExcludedAddresses keptFree) {
    String obstacle = obstacle(before);
    if (obstacle != null) {
      return new FieldWork.None(
          "in the earlier state " + obstacle + ": put the line in order first");
    }
    obstacle = obstacle(after);
    if (obstacle == null) {
      obstacle = sharedAddress(after);
    }
    if (obstacle != null) {
      return new FieldWork.None("in the later state " + obstacle + ": check and correct it first");
    }
    String name = nameOfTwo(items);
    if (name != null) {
      return new FieldWork.None(
          "\""
              + name
              + "\" is one device before and another one after, at another place or of another"
              + " kind: take the old one out in one change, and put the new one in with the next");
    }
    Separation separation = Separation.of(items, keptFree);
    if (separation == null) {
      return new FieldWork.None(
          "in the earlier state "
              + sharedAddress(before)
              + ", and no address is free: keep fewer addresses free, or take a unit off the line"
              + " first");
    }
    ChainStates chains = ChainStates.of(separation.items());
    List<Phase> work = WorkPlanner.phases(before, after, chains, separation, keptFree);
    return new FieldWork.Plan(
        PlanBuilder.of(before, after, chains, work, differences),
        Stream.concat(
                Stream.ofNullable(separation.remark()),
                remarks(before, after, chains, differences, !work.isEmpty()).stream())
            .toList(),
        AddressingWays.of(before, chains, keptFree, work));
  }

  private static List<String> remarks(
      Site before, Site after, ChainStates chains, List<Difference> differences, boolean work) {
    List<String> remarks = new ArrayList<>(DeviceDoubts.remarks(before, after, chains));
    for (Difference difference : differences) {
      if (difference instanceof Difference.TypeSet set && ReprovingCheck.concerns(set)) {
        remarks.add(TypeFacts.remark(after, set));
      }
    }
    if (work && !before.stage().is(Stage.COMMISSIONED)) {
      remarks.add(
          "The earlier state is planned: where nothing is set up yet, set it up as the file says;"
              + " the order is for a line that is live.");
    }
    if (!work && !SoftwareChanges.of(before, after, differences).isEmpty()) {
      remarks.add(
          "There is nothing to do at the units; what is to be done at the software is below.");
    }
    if (work && !LineState.of(chains, Set.copyOf(chains.all().items())).isWhole()) {
      remarks.add(
          "The later state has a segment without a terminator at each end, or with one more:"
              + " check it before you go.");
    }
    if (differences.stream()
        .anyMatch(
            one ->
                one instanceof Difference.LineSet line
                    && line.setting().what().startsWith("cable."))) {
      remarks.add(
          "The cable is written differently: where it is really another, lay it beside the old one"
              + " and land it in one go, with the supply of all units isolated.");
    }
    return remarks;
  }

  /** Why there cannot be a plan: items that cannot be distinguished. Null where there can. */
  private static @Nullable String obstacle(Site site) {
    if (site.items().isEmpty()) {
      return "there is no chain";
    }
    Set<String> names = new HashSet<>();
    for (ChainItem item : site.items()) {
      String name = item.name().orNull();
      if (name == null) {
        return item.called() + " has no name";
      }
      if (!names.add(name)) {
        return "the name \"" + name + "\" is used twice";
      }
      if (TrackedItem.isLive(item)) {
        Integer address = item.address().orNull();
        if (address == null) {
          return "\"" + name + "\" has no address";
        }
      }
    }
    return null;
  }

  /**
   * Steps and zones go by names: while both devices are there, nobody could tell which is meant.
   */
  private static @Nullable String nameOfTwo(List<TrackedItem> items) {
    Set<String> leaving = new HashSet<>();
    items.stream().filter(item -> item.after() == null).forEach(item -> leaving.add(item.name()));
    return items.stream()
        .filter(item -> item.before() == null)
        .map(TrackedItem::name)
        .filter(leaving::contains)
        .findFirst()
        .orElse(null);
  }

  private static @Nullable String sharedAddress(Site site) {
    Set<Integer> addresses = new HashSet<>();
    for (ChainItem item : site.items()) {
      Integer address = item.address().orNull();
      if (TrackedItem.isLive(item) && address != null && !addresses.add(address)) {
        return "address " + address + " is used twice";
      }
    }
    return null;
  }
}
