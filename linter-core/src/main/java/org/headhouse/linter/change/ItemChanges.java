package org.headhouse.linter.change;

import static org.headhouse.linter.change.SettingComparison.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.Device;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Polled;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/** What changes at one item that stays on the chain, by subject. */
final class ItemChanges {
  private ItemChanges() {}

  /** What is connected to the terminals of an item. */
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
    SettingComparison.compare(
        "conductors" + side, before.conductors(), after.conductors(), changes);
    changes.addAll(
        SettingComparison.change("pair" + side, before.pair(), after.pair(), Pair.STRAIGHT));
    SettingComparison.compare("stub" + side, before.stub(), after.stub(), changes);
  }

  /** The cable from an item to the next, and the surge protectors at its ends. */
  static List<ValueChange> cable(TrackedItem item) {
    List<ValueChange> changes = run(item);
    if (item.before() != null && item.after() != null) {
      changes.addAll(
          SettingComparison.change(
              "surge-protection-to-next",
              item.before().surgeProtectionToNext(),
              item.after().surgeProtectionToNext(),
              SurgeProtection.NONE));
    }
    return changes;
  }

  /** The cable from an item to the next alone. */
  static List<ValueChange> run(TrackedItem item) {
    List<ValueChange> changes = new ArrayList<>();
    var before = item.before();
    var after = item.after();
    if (before != null && after != null) {
      SettingComparison.compare(
          "cable-to-next", before.cableToNext(), after.cableToNext(), changes);
      changes.addAll(
          SettingComparison.change(
              "run-to-next", before.runToNext(), after.runToNext(), Run.INSIDE));
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
          in(before, Repeater::terminationIn),
          in(after, Repeater::terminationIn),
          changes);
      SettingComparison.compare(
          "termination out",
          in(before, Repeater::terminationOut),
          in(after, Repeater::terminationOut),
          changes);
    } else {
      SettingComparison.compare(
          "termination",
          in(item.before(), one -> one.connection(Side.IN).termination()),
          in(item.after(), one -> one.connection(Side.IN).termination()),
          changes);
    }
    return changes;
  }

  /** The bias at an item that stays, joins or leaves. */
  static List<ValueChange> bias(Site before, Site after, TrackedItem item) {
    String from = bias(before, item.before());
    String to = bias(after, item.after());
    return Objects.equals(from, to) ? List.of() : List.of(new ValueChange("bias", from, to));
  }

  /** The bias at an item as the file has it, or null where there is none. */
  static @Nullable String bias(Site site, @Nullable ChainItem item) {
    if (item == null) {
      return null;
    }
    Setting<String> name = item.name();
    LineSettings line = site.line().orNull();
    List<String> found = new ArrayList<>();
    for (Bias bias : line == null ? List.<Bias>of() : line.bias().or(List.of())) {
      if (bias.at().isGiven() && Objects.equals(bias.at().orNull(), name.orNull())) {
        found.add(
            SettingComparison.text(bias.resistors())
                + " at "
                + SettingComparison.text(bias.supply())
                + (bias.side().isGiven() ? ", side " + SettingComparison.text(bias.side()) : ""));
      }
    }
    return found.isEmpty() ? null : String.join("; ", found);
  }

  /** The wires of the weather station, at an item that stays, joins or leaves. */
  static List<ValueChange> station(Site before, Site after, TrackedItem item) {
    boolean was = hasStation(before, item.before());
    boolean will = hasStation(after, item.after());
    return was && will
        ? sensors(before, after)
        : was == will
            ? List.of()
            : List.of(
                new ValueChange("weather-station", was ? "wired" : null, will ? "wired" : null));
  }

  private static List<ValueChange> sensors(Site before, Site after) {
    return SettingComparison.change(
        "weather-station.readings",
        in(before.weatherStation().orNull(), WeatherStation::readings),
        in(after.weatherStation().orNull(), WeatherStation::readings));
  }

  static boolean hasStation(Site site, @Nullable ChainItem item) {
    WeatherStation station = site.weatherStation().orNull();
    String at = station == null ? null : station.at().orNull();
    return at != null && item != null && item.name().is(at);
  }

  /** Where the readings come from. */
  static List<ValueChange> sources(@Nullable Unit before, Unit after) {
    List<ValueChange> changes = new ArrayList<>();
    for (Reading reading : Reading.values()) {
      SettingComparison.compare(
          reading.word(), source(before, reading), source(after, reading), changes);
    }
    return changes;
  }

  private static Setting<?> source(@Nullable Unit unit, Reading reading) {
    if (unit != null && unit.outdoor().isFaulty()) {
      return unit.outdoor();
    }
    return in(unit == null ? null : unit.outdoor().orNull(), outdoor -> outdoor.source(reading));
  }

  /** What else is set at a unit. */
  static List<ValueChange> settings(Unit before, Unit after) {
    List<ValueChange> changes = new ArrayList<>();
    SettingComparison.compare("vents", before.vents(), after.vents(), changes);
    SettingComparison.compare(
        "on-stale-readings", before.onStaleReadings(), after.onStaleReadings(), changes);
    SettingComparison.compare("stale-after", before.staleAfter(), after.staleAfter(), changes);
    SettingComparison.compare("close-time", before.closeTime(), after.closeTime(), changes);
    Network network = before.network().orNull();
    Network other = after.network().orNull();
    SettingComparison.compare(
        "network.ip", in(network, Network::ip), in(other, Network::ip), changes);
    SettingComparison.compare(
        "network.gateway", in(network, Network::gateway), in(other, Network::gateway), changes);
    SettingComparison.compare("firmware", before.firmware(), after.firmware(), changes);
    return changes;
  }

  /** In what the device is another. */
  static List<ValueChange> device(TrackedItem item) {
    List<ValueChange> changes = new ArrayList<>();
    if (item.before() != null && item.after() != null) {
      Device from = item.before().device();
      Device to = item.after().device();
      SettingComparison.compare("device-type", from.typeId(), to.typeId(), changes);
      SettingComparison.compare("serial-number", from.serialNumber(), to.serialNumber(), changes);
    }
    return changes;
  }

  /** What the file knows of a device, and how it is asked. */
  static List<ValueChange> data(ChainItem before, ChainItem after) {
    List<ValueChange> changes = new ArrayList<>();
    Connection from = before.connection(Side.IN);
    Connection to = after.connection(Side.IN);
    SettingComparison.compare("unit-load", from.unitLoad(), to.unitLoad(), changes);
    SettingComparison.compare("idle-bias", from.idleBias(), to.idleBias(), changes);
    SettingComparison.compare(
        "isolated", before.device().isolated(), after.device().isolated(), changes);
    if (before instanceof Equipment equipment && after instanceof Equipment later) {
      SettingComparison.compare("broadcasts", equipment.broadcasts(), later.broadcasts(), changes);
      changes.addAll(polled(equipment, later));
    } else if (before instanceof Converter converter && after instanceof Converter later) {
      SettingComparison.compare("latency", converter.latency(), later.latency(), changes);
    }
    return changes;
  }

  /** How another device is asked. */
  static List<ValueChange> polled(Equipment before, Equipment after) {
    Polled polled = before.polled().orNull();
    Polled other = after.polled().orNull();
    List<ValueChange> changes = new ArrayList<>();
    SettingComparison.compare("polled.by", in(polled, Polled::by), in(other, Polled::by), changes);
    SettingComparison.compare(
        "polled.registers", in(polled, Polled::registers), in(other, Polled::registers), changes);
    SettingComparison.compare(
        "polled.every", in(polled, Polled::every), in(other, Polled::every), changes);
    return changes;
  }
}
