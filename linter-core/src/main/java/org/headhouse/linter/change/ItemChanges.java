package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/** What changes at one item that stays on the chain, by subject. */
final class ItemChanges {
  private static final Place NOWHERE = Place.at(Region.START_OF_FILE);

  private ItemChanges() {}

  /** What is landed on the terminals of an item. */
  static List<ValueChange> terminals(TrackedItem item) {
    List<ValueChange> changes = new ArrayList<>();
    ChainItem before = item.before();
    ChainItem after = item.after();
    if (before == null || after == null) {
      return changes;
    }
    if (item.latest() instanceof Repeater) {
      terminals(" in", before.connection(Side.IN), after.connection(Side.IN), changes);
      terminals(" out", before.connection(Side.OUT), after.connection(Side.OUT), changes);
    } else {
      terminals("", before.connection(Side.IN), after.connection(Side.IN), changes);
    }
    if (before instanceof Unit unit && after instanceof Unit later) {
      SettingComparison.compare("comm-module", unit.commModule(), later.commModule(), changes);
    }
    return changes;
  }

  private static void terminals(
      String side, Connection before, Connection after, List<ValueChange> changes) {
    SettingComparison.compare("conductors" + side, before.conductors(), after.conductors(), changes);
    changes.addAll(SettingComparison.change("pair" + side, before.pair(), after.pair(), Pair.STRAIGHT));
    SettingComparison.compare("stub" + side, before.stub(), after.stub(), changes);
  }

  /** The cable behind an item. */
  static List<ValueChange> cable(TrackedItem item) {
    List<ValueChange> changes = new ArrayList<>();
    var before = item.before();
    var after = item.after();
    if (before != null && after != null) {
      SettingComparison.compare("cable-to-next", before.cableToNext(), after.cableToNext(), changes);
      changes.addAll(
          SettingComparison.change("run-to-next", before.runToNext(), after.runToNext(), Run.INSIDE));
      changes.addAll(
          SettingComparison.change(
              "surge-protection-to-next",
              before.surgeProtectionToNext(),
              after.surgeProtectionToNext(),
              SurgeProtection.NONE));
    }
    return changes;
  }

  /** The terminators of an item that stays, joins or leaves. */
  static List<ValueChange> termination(TrackedItem item) {
    List<ValueChange> changes = new ArrayList<>();
    if (item.latest() instanceof Repeater) {
      Repeater before = item.before() instanceof Repeater repeater ? repeater : null;
      Repeater after = item.after() instanceof Repeater repeater ? repeater : null;
      SettingComparison.compare(
          "termination in",
          before == null ? missing() : before.terminationIn(),
          after == null ? missing() : after.terminationIn(),
          changes);
      SettingComparison.compare(
          "termination out",
          before == null ? missing() : before.terminationOut(),
          after == null ? missing() : after.terminationOut(),
          changes);
    } else {
      SettingComparison.compare(
          "termination", termination(item.before()), termination(item.after()), changes);
    }
    return changes;
  }

  private static Setting<Termination> termination(@Nullable ChainItem item) {
    return item == null ? missing() : item.connection(Side.IN).termination();
  }

  private static Setting<Termination> missing() {
    return new Setting.Missing<>(NOWHERE);
  }

  /** The bias at an item that stays, joins or leaves. */
  static List<ValueChange> bias(Site before, Site after, TrackedItem item) {
    String from = item.before() == null ? null : bias(before, item.before().name());
    String to = item.after() == null ? null : bias(after, item.after().name());
    return Objects.equals(from, to) ? List.of() : List.of(new ValueChange("bias", from, to));
  }

  private static @Nullable String bias(Site site, Setting<String> name) {
    LineSettings line = site.line().orNull();
    for (Bias bias : line == null ? List.<Bias>of() : line.bias().or(List.of())) {
      if (bias.at().isGiven() && Objects.equals(bias.at().orNull(), name.orNull())) {
        return SettingComparison.text(bias.resistors()) + " at " + SettingComparison.text(bias.supply());
      }
    }
    return null;
  }

  /** Where the readings come from. */
  static List<ValueChange> sources(@Nullable Unit before, Unit after) {
    List<ValueChange> changes = new ArrayList<>();
    for (Reading reading : Reading.values()) {
      SettingComparison.compare(reading.word(), source(before, reading), source(after, reading), changes);
    }
    return changes;
  }

  private static Setting<?> source(@Nullable Unit unit, Reading reading) {
    if (unit == null) {
      return missing();
    }
    Outdoor outdoor = unit.outdoor().orNull();
    return outdoor == null
        ? (unit.outdoor().isFaulty() ? new Setting.Faulty<>(NOWHERE) : missing())
        : outdoor.source(reading);
  }

  /** What else is set at a unit. */
  static List<ValueChange> settings(Unit before, Unit after) {
    List<ValueChange> changes = new ArrayList<>();
    SettingComparison.compare("vents", before.vents(), after.vents(), changes);
    SettingComparison.compare(
        "on-stale-readings", before.onStaleReadings(), after.onStaleReadings(), changes);
    Network network = before.network().orNull();
    Network other = after.network().orNull();
    SettingComparison.compare(
        "network.ip",
        network == null ? missing() : network.ip(),
        other == null ? missing() : other.ip(),
        changes);
    SettingComparison.compare(
        "network.gateway",
        network == null ? missing() : network.gateway(),
        other == null ? missing() : other.gateway(),
        changes);
    SettingComparison.compare("firmware", before.firmware(), after.firmware(), changes);
    return changes;
  }
}
