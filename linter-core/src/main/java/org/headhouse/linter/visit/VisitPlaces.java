package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/** Finds where something was seen or measured, by the words of the list. */
final class VisitPlaces {
  private static final Pattern APOSTROPHE =
      Pattern.compile("(?:^|(?<=[;\t\r\n]))'(?=[=+@\uFF1D\uFF0B\uFF0D\uFF20\\p{Cntrl}-])");

  private final Map<String, List<Place>> places = new LinkedHashMap<>();
  private final SpellingSuggester nearest;
  private final Faults faults;

  /**
   * Where something was seen or measured.
   *
   * @param side of a repeater; else null
   */
  record Place(ChainItem item, @Nullable Side side) {}

  VisitPlaces(Site site, Faults faults) {
    for (ChainItem item : site.items()) {
      String name = item.name().orNull();
      if (name != null && item instanceof Repeater) {
        for (Side side : Side.values()) {
          add(VisitEntry.where(name, side), new Place(item, side));
        }
      } else if (name != null) {
        add(name, new Place(item, null));
      }
    }
    this.nearest = new SpellingSuggester(places.keySet());
    this.faults = faults;
  }

  private void add(String where, Place place) {
    places.computeIfAbsent(plain(where), it -> new ArrayList<>()).add(place);
  }

  /**
   * A name as cells have it: without spaces around it, and without the apostrophes that keep a
   * spreadsheet from running a part of it.
   */
  static String plain(String name) {
    return APOSTROPHE.matcher(Cell.of(name, 0, 0).text()).replaceAll("");
  }

  /** The place, or null where the site has none such or several; that is reported. */
  @Nullable Place read(VisitEntry entry, Cell where) {
    List<Place> found = places.getOrDefault(plain(where.text()), List.of());
    if (found.size() != 1) {
      faults.add(
          where,
          found.isEmpty()
              ? "the site has no " + where.shown()
              : "the site has " + found.size() + " items called " + where.shown(),
          "nobody can tell where that was found",
          found.isEmpty()
              ? nearest
                  .suggest(where.text())
                  .map(name -> "write " + name + " if that is the one")
                  .orElse("write the name as the site has it now, and a repeater with its side")
              : "give each item a name of its own, in the site and on its display");
      return null;
    }
    Place place = found.get(0);
    boolean ofUnits = entry != VisitEntry.PAIR_RESISTANCE && entry != VisitEntry.IDLE_VOLTAGE;
    if (ofUnits && !(place.item() instanceof Unit)) {
      faults.add(
          where,
          where.shown() + " is no unit",
          "it has neither a display nor vents",
          "write the name of the unit where that was seen");
      return null;
    }
    return place;
  }
}
