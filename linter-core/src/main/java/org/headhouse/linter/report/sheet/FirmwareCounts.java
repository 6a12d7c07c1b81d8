package org.headhouse.linter.report.sheet;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * How many units there are of each type and firmware. Keeps one number for each pair of them. For
 * one thread.
 */
public final class FirmwareCounts {
  private static final String NO_TYPE = "type " + PlainText.NOT_WRITTEN;
  private static final String NO_FIRMWARE = "firmware " + PlainText.NOT_WRITTEN;

  private final Map<Key, Count> counts =
      new TreeMap<>(Comparator.comparing(Key::type).thenComparing(Key::firmware));

  private record Key(String type, String firmware) {}

  private static final class Count {
    private int units;
    private int sites;
  }

  /** One line of the table. */
  record Row(String type, String firmware, int units, int sites) {}

  /** Adds the units of a site. */
  public void add(Site site) {
    Set<Key> seen = new HashSet<>();
    for (Unit unit : site.units()) {
      Key key =
          new Key(
              PlainText.name(unit.deviceType().or(NO_TYPE)),
              PlainText.name(unit.firmware().or(NO_FIRMWARE)));
      Count count = counts.computeIfAbsent(key, any -> new Count());
      count.units++;
      count.sites += seen.add(key) ? 1 : 0;
    }
  }

  /** By type, then by firmware. */
  List<Row> rows() {
    return counts.entrySet().stream()
        .map(
            entry ->
                new Row(
                    entry.getKey().type(),
                    entry.getKey().firmware(),
                    entry.getValue().units,
                    entry.getValue().sites))
        .toList();
  }
}
