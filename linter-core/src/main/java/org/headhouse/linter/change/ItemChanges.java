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
  static List<Change> terminals(Member member) {
    List<Change> changes = new ArrayList<>();
    ChainItem before = member.before();
    ChainItem after = member.after();
    if (before == null || after == null) {
      return changes;
    }
    if (member.item() instanceof Repeater) {
      terminals(" in", before.connection(Side.IN), after.connection(Side.IN), changes);
      terminals(" out", before.connection(Side.OUT), after.connection(Side.OUT), changes);
    } else {
      terminals("", before.connection(Side.IN), after.connection(Side.IN), changes);
    }
    if (before instanceof Unit unit && after instanceof Unit later) {
      Written.compare("comm-module", unit.commModule(), later.commModule(), changes);
    }
    return changes;
  }

  private static void terminals(
      String side, Connection before, Connection after, List<Change> changes) {
    Written.compare("conductors" + side, before.conductors(), after.conductors(), changes);
    changes.addAll(Written.change("pair" + side, before.pair(), after.pair(), Pair.STRAIGHT));
    Written.compare("stub" + side, before.stub(), after.stub(), changes);
  }

  /** The cable behind an item. */
  static List<Change> cable(Member member) {
    List<Change> changes = new ArrayList<>();
    var before = member.before();
    var after = member.after();
    if (before != null && after != null) {
      Written.compare("cable-to-next", before.cableToNext(), after.cableToNext(), changes);
      changes.addAll(
          Written.change("run-to-next", before.runToNext(), after.runToNext(), Run.INSIDE));
      changes.addAll(
          Written.change(
              "surge-protection-to-next",
              before.surgeProtectionToNext(),
              after.surgeProtectionToNext(),
              SurgeProtection.NONE));
    }
    return changes;
  }

  /** The terminators of an item that stays, joins or leaves. */
  static List<Change> termination(Member member) {
    List<Change> changes = new ArrayList<>();
    if (member.item() instanceof Repeater) {
      Repeater before = member.before() instanceof Repeater repeater ? repeater : null;
      Repeater after = member.after() instanceof Repeater repeater ? repeater : null;
      Written.compare(
          "termination in",
          before == null ? missing() : before.terminationIn(),
          after == null ? missing() : after.terminationIn(),
          changes);
      Written.compare(
          "termination out",
          before == null ? missing() : before.terminationOut(),
          after == null ? missing() : after.terminationOut(),
          changes);
    } else {
      Written.compare(
          "termination", termination(member.before()), termination(member.after()), changes);
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
  static List<Change> bias(Site before, Site after, Member member) {
    String from = member.before() == null ? null : bias(before, member.before().name());
    String to = member.after() == null ? null : bias(after, member.after().name());
    return Objects.equals(from, to) ? List.of() : List.of(new Change("bias", from, to));
  }

  private static @Nullable String bias(Site site, Setting<String> name) {
    LineSettings line = site.line().orNull();
    for (Bias bias : line == null ? List.<Bias>of() : line.bias().or(List.of())) {
      if (bias.at().isGiven() && Objects.equals(bias.at().orNull(), name.orNull())) {
        return Written.text(bias.resistors()) + " at " + Written.text(bias.supply());
      }
    }
    return null;
  }

  /** Where the readings come from. */
  static List<Change> sources(@Nullable Unit before, Unit after) {
    List<Change> changes = new ArrayList<>();
    for (Reading reading : Reading.values()) {
      Written.compare(reading.word(), source(before, reading), source(after, reading), changes);
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
  static List<Change> settings(Unit before, Unit after) {
    List<Change> changes = new ArrayList<>();
    Written.compare("vents", before.vents(), after.vents(), changes);
    Written.compare(
        "on-stale-readings", before.onStaleReadings(), after.onStaleReadings(), changes);
    Network network = before.network().orNull();
    Network other = after.network().orNull();
    Written.compare(
        "network.ip",
        network == null ? missing() : network.ip(),
        other == null ? missing() : other.ip(),
        changes);
    Written.compare(
        "network.gateway",
        network == null ? missing() : network.gateway(),
        other == null ? missing() : other.gateway(),
        changes);
    Written.compare("firmware", before.firmware(), after.firmware(), changes);
    return changes;
  }
}
