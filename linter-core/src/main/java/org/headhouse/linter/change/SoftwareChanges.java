package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What is to be done at supervising software that is there in both states, apart from what goes
 * with a step: the way on which it asks, how it asks, and zones that come or go by themselves.
 */
final class SoftwareChanges {
  private static final String POLLING = "supervision.polling.";

  private final Site before;
  private final Site after;
  private final List<Difference> differences;

  private SoftwareChanges(Site before, Site after, List<Difference> differences) {
    this.before = before;
    this.after = after;
    this.differences = differences;
  }

  /** Imperative sentences without a full stop, in the order of the work. */
  static List<String> of(Site before, Site after, List<Difference> differences) {
    Supervision was = before.supervision().orNull();
    Supervision will = after.supervision().orNull();
    if (was == null || will == null) {
      return List.of();
    }
    SoftwareChanges changes = new SoftwareChanges(before, after, differences);
    return Stream.of(changes.link(was, will), changes.polling(), changes.zones())
        .flatMap(List::stream)
        .toList();
  }

  private List<String> link(Supervision was, Supervision will) {
    Link from = was.link().orNull();
    Link to = will.link().orNull();
    if (from == null
        || to == null
        || (!SettingComparison.differ(was.link(), will.link())
            && !SettingComparison.differ(was.at(), will.at()))) {
      return List.of();
    }
    String detach =
        switch (from) {
          case SERIAL -> "take it off the pair" + at(was);
          case THROUGH_HEAD -> "end all that the head unit asks and writes for it";
          case ETHERNET -> "end all that it asks over Ethernet";
        };
    String attach =
        switch (to) {
          case SERIAL -> "attach it to the pair" + at(will) + port();
          case THROUGH_HEAD -> "let it ask the head unit alone";
          case ETHERNET -> "let it ask each unit at its IP address";
        };
    return List.of(
        "with the software stopped, "
            + detach
            + "; then "
            + attach
            + "; both ways must never ask at once; at each zone, read the name of the unit back"
            + " before the software may write");
  }

  private static String at(Supervision supervision) {
    return supervision.at().optional().map(name -> " at \"" + name + "\"").orElse("");
  }

  private String port() {
    LineSettings line = after.line().orNull();
    List<String> settings = new ArrayList<>();
    if (line != null) {
      add("baud", line.baud(), settings);
      add("parity", line.parity(), settings);
      add("stop-bits", line.stopBits(), settings);
    }
    return settings.isEmpty() ? "" : " and set its port to " + String.join(", ", settings);
  }

  private static void add(String what, Setting<?> setting, List<String> settings) {
    String text = SettingComparison.text(setting);
    if (text != null) {
      settings.add(what + " " + text);
    }
  }

  private List<String> polling() {
    List<String> settings = new ArrayList<>();
    for (Difference difference : differences) {
      if (difference instanceof Difference.SiteSet set
          && set.setting().what().startsWith(POLLING)
          && set.setting().to() != null) {
        settings.add(
            set.setting().what().substring(POLLING.length())
                + (set.setting().from() == null ? "" : " from " + set.setting().from())
                + " to "
                + set.setting().to());
      }
    }
    return settings.isEmpty()
        ? List.of()
        : List.of("set the polling of the software: " + String.join(", ", settings));
  }

  /** Of units that are on the line in both states; others come and go with a step. */
  private List<String> zones() {
    Map<String, String> renamed = new HashMap<>();
    for (Difference difference : differences) {
      if (difference instanceof Difference.Renamed one) {
        renamed.put(one.item(), one.from());
      }
    }
    Set<String> were = zones(before);
    Set<String> are = zones(after);
    List<String> zones = new ArrayList<>();
    if (were == null || are == null) {
      return zones;
    }
    for (Unit unit : after.units()) {
      String name = unit.name().orNull();
      Integer address = unit.address().orNull();
      if (name == null || address == null) {
        continue;
      }
      String earlier = renamed.getOrDefault(name, name);
      // One that has its earlier name in the list is the same, and a check finds the name.
      boolean isZone = are.contains(name) || are.contains(earlier);
      if (isZone != were.contains(earlier) && isLive(unit) && isLive(before.unit(earlier))) {
        zones.add(
            isZone
                ? "add the zone \"" + name + "\" at address " + address
                : "delete the zone \"" + name + "\": nobody sees its alarms any more");
      }
    }
    return zones;
  }

  private static boolean isLive(@Nullable Unit unit) {
    return unit != null && !unit.commModule().is(CommModule.ABSENT);
  }

  /** Null where the zones are not understood. */
  private static @Nullable Set<String> zones(Site site) {
    Supervision supervision = site.supervision().orNull();
    List<Setting<String>> zones = supervision == null ? null : supervision.zones().orNull();
    if (zones == null || zones.stream().anyMatch(Setting::isFaulty)) {
      return null;
    }
    Set<String> names = new HashSet<>();
    zones.forEach(zone -> zone.optional().ifPresent(names::add));
    return names;
  }
}
