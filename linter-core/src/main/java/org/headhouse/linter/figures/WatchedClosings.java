package org.headhouse.linter.figures;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** What the watch showed of the units' vents, in the newest record of each. */
final class WatchedClosings {
  private final Site site;
  private final Map<String, Watched> byUnit = new HashMap<>();

  private record Watched(int number, @Nullable LocalDate day, StormResponse response) {}

  WatchedClosings(Site site) {
    this.site = site;
    List<ProvingRecord> records =
        site.commissioning().optional().map(Commissioning::records).orElse(List.of());
    for (int number = 0; number < records.size(); number++) {
      ProvingRecord record = records.get(number);
      for (Setting<StormResponse> one : record.stormResponseSeen().or(List.of())) {
        StormResponse response = one.orNull();
        String name = response == null ? null : response.unit().orNull();
        if (response != null && name != null && response.closedIn().isGiven()) {
          byUnit.merge(
              name, new Watched(number, record.dayOrNull(), response), WatchedClosings::newer);
        }
      }
    }
  }

  /**
   * Of one record the longer; of two records the newer, and of two of one day the later written.
   */
  private static Watched newer(Watched before, Watched next) {
    if (before.number == next.number) {
      return seconds(before.response.closedIn()) > seconds(next.response.closedIn())
          ? before
          : next;
    }
    return before.day != null && next.day != null && before.day.isAfter(next.day) ? before : next;
  }

  /** What the watch showed of a unit; null where nobody took it. */
  @Nullable StormResponse of(Unit unit) {
    Watched watched = byUnit.get(unit.name().or(""));
    return watched == null ? null : watched.response;
  }

  /**
   * How long the vents of a unit take: what the watch showed when the wind limit was passed, on a
   * line that stands as it was proved. Else the {@code close-time} as it is written, unless the
   * watch showed more.
   */
  Setting<Interval> closing(Unit unit) {
    StormResponse response = of(unit);
    if (response == null) {
      return unit.closeTime();
    }
    boolean proved = response.limit().isGiven() && site.stage().is(Stage.COMMISSIONED);
    boolean longer =
        unit.closeTime().isGiven() && seconds(response.closedIn()) > seconds(unit.closeTime());
    return proved || longer ? response.closedIn() : unit.closeTime();
  }

  private static double seconds(Setting<Interval> setting) {
    return setting.optional().map(Interval::seconds).orElse(0.0);
  }
}
