package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * One zone that the supervising software lists.
 *
 * @param name exactly as the file has it
 * @param unit the unit of that name, or null where there is none
 */
record Zone(String name, @Nullable Unit unit) {

  /** The zones in the order of the file; where none are listed, all units in that of the chain. */
  static List<Zone> of(Site site) {
    Supervision supervision = site.supervision().orNull();
    List<Setting<String>> listed = supervision == null ? null : supervision.zones().orNull();
    List<Zone> zones = new ArrayList<>();
    if (listed != null) {
      for (Setting<String> name : listed) {
        name.optional().ifPresent(zone -> zones.add(new Zone(zone, site.unit(zone))));
      }
      return zones;
    }
    for (Unit unit : site.units()) {
      unit.name().optional().ifPresent(name -> zones.add(new Zone(name, unit)));
    }
    return zones;
  }

  String shownName() {
    return PlainText.name(name);
  }

  String address() {
    return unit == null ? "" : unit.address().optional().map(String::valueOf).orElse("");
  }

  String role() {
    return unit == null ? "" : unit.role().optional().map(role -> role.word()).orElse("");
  }

  String deviceType() {
    return unit == null ? "" : unit.deviceType().or("");
  }

  String shownDeviceType() {
    return PlainText.name(deviceType());
  }

  String ip() {
    return unit == null
        ? ""
        : unit.network().optional().flatMap(network -> network.ip().optional()).orElse("");
  }

  String shownIp() {
    return PlainText.name(ip());
  }
}
