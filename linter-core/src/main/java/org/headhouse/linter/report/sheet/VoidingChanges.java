package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.ReprovingCheck;
import org.headhouse.linter.change.ValueChange;
import org.headhouse.linter.site.ItemKind;

/**
 * Says in words which changes make a proof invalid. Whether one does is asked where a changed file
 * is checked, so that the two cannot differ.
 */
final class VoidingChanges {
  private static final List<Kind> ALL =
      List.of(
          new Kind(
              "a unit or another device is added, removed or exchanged",
              new Difference.Added("", ItemKind.UNIT, null),
              new Difference.Removed("", ItemKind.UNIT, null),
              new Difference.Exchanged("", ItemKind.UNIT, List.of(change("device-type"))),
              item("device-type"),
              item("serial-number")),
          new Kind(
              "another unit becomes the head unit", new Difference.RoleChanged("", change("role"))),
          new Kind("a unit gets another address", new Difference.Readdressed("", 1, 2)),
          new Kind(
              "a cable, a connection, a terminator or a bias resistor is changed",
              new Difference.Rewired("", change("cable-to-next")),
              new Difference.Terminated("", change("termination")),
              new Difference.Rebiased("", change("bias"))),
          new Kind(
              "the terminals, the load, the need of bias or the isolation of a type are corrected in"
                  + " the file of device types",
              new Difference.TypeSet("", change("positive-terminal")),
              new Difference.TypeSet("", change("unit-load"))),
          new Kind(
              "a unit takes an outdoor reading from elsewhere",
              new Difference.Resourced("", change("wind-speed"))),
          new Kind(
              "a unit gets other firmware, or what it does with its vents is set anew",
              item("firmware"),
              item("vents"),
              item("on-stale-readings"),
              item("stale-after"),
              item("close-time")),
          new Kind(
              "the speed of the line or what the head unit sends is changed",
              new Difference.LineSet(change("baud")),
              new Difference.LineSet(change("cable.gauge")),
              new Difference.LineSet(change("traffic.broadcast.every"))),
          new Kind(
              "the weather station is moved or changed",
              site("weather-station.at"),
              site("weather-station.readings"),
              site("weather-station.averaging")),
          new Kind(
              "software asks the units in another way or more often",
              site("supervision.link"),
              site("supervision.polling.every"),
              item("polled.every")),
          new Kind(
              "a name or the title is changed",
              new Difference.Renamed("", ""),
              site("title"),
              site("customer")),
          new Kind("an Ethernet address is changed", item("network.ip")),
          new Kind(
              "a limit that the site sets itself is changed",
              site("weather-station.maximum-age"),
              site("weather-station.close-within")));

  /** Changes that count alike, in words that go on a sentence. */
  record Kind(String words, List<Difference> samples) {
    Kind(String words, Difference... samples) {
      this(words, List.of(samples));
    }

    boolean voids() {
      return ReprovingCheck.isDue(samples);
    }
  }

  private VoidingChanges() {}

  private static ValueChange change(String what) {
    return new ValueChange(what, "before", "after");
  }

  private static Difference item(String what) {
    return new Difference.ItemSet("", change(what));
  }

  private static Difference site(String what) {
    return new Difference.SiteSet(change(what));
  }

  /** All kinds of change that are told apart. */
  static List<Kind> all() {
    return ALL;
  }

  /** Those after which the line has to be proved again, or those after which it does not. */
  static List<String> words(boolean voiding) {
    return ALL.stream().filter(kind -> kind.voids() == voiding).map(Kind::words).toList();
  }
}
