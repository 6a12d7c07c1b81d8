package org.headhouse.linter.draft;

import java.util.List;
import org.headhouse.linter.change.SettingComparison;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/** The settings of an item of a site by the columns of a list, and whether a list says the same. */
final class ItemSettings {
  private static final Place NOWHERE = Place.at(Region.START_OF_FILE);

  private ItemSettings() {}

  /** What an item of a site says in a column, on one side of it. */
  static Setting<?> of(ChainItem item, Column column, Side side) {
    return switch (column) {
      case NAME -> item.name();
      case ADDRESS -> item.address();
      case TYPE -> item.deviceType();
      case SERIAL -> item.device().serialNumber();
      case CONDUCTORS -> item.connection(side).conductors();
      case PAIR -> item.connection(side).pair();
      case TERMINATION -> item.connection(side).termination();
      case STUB -> item.connection(side).stub();
      case LENGTH -> item.cableToNext();
      case RUN -> item.runToNext();
      case PROTECTION -> item.surgeProtectionToNext();
      case ROLE, FIRMWARE, MODULE, VENTS, STALE ->
          item instanceof Unit unit ? ofUnit(unit, column) : new Setting.Missing<>(item.place());
    };
  }

  private static Setting<?> ofUnit(Unit unit, Column column) {
    return switch (column) {
      case ROLE -> unit.role();
      case FIRMWARE -> unit.firmware();
      case MODULE -> unit.commModule();
      case VENTS -> unit.vents();
      case STALE -> unit.onStaleReadings();
      default -> throw new IllegalArgumentException(column + " is of other items too");
    };
  }

  /** Whether a list says something else; what is not understood in the site is something else. */
  static boolean differs(Setting<?> setting, Column column, String value) {
    if (setting.isMissing() && value.equals(usual(column))) {
      return false;
    }
    return setting.isFaulty()
        || (column == Column.CONDUCTORS
            ? !isLanded(setting, value)
            : SettingComparison.differ(
                setting, new Setting.Given<>(meant(column, value), NOWHERE)));
  }

  /** What counts where nothing is written. */
  private static @Nullable String usual(Column column) {
    return switch (column) {
      case PAIR -> Pair.STRAIGHT.word();
      case RUN -> Run.INSIDE.word();
      case PROTECTION -> SurgeProtection.NONE.word();
      default -> null;
    };
  }

  private static Object meant(Column column, String value) {
    Object quantity =
        switch (column) {
          case LENGTH, STUB -> Quantities.length(value);
          case TERMINATION -> Quantities.termination(value);
          default -> value;
        };
    return quantity == null ? value : quantity;
  }

  /** The conductors in any order. */
  private static boolean isLanded(Setting<?> setting, String value) {
    List<String> landed =
        setting.orNull() instanceof List<?> list
            ? list.stream()
                .map(one -> one instanceof Setting<?> each ? each.orNull() : one)
                .map(one -> one instanceof Conductor conductor ? conductor.word() : "?")
                .toList()
            : List.of();
    List<String> listed = List.of(value.substring(1, value.length() - 1).split(", ", -1));
    return landed.size() == listed.size() && landed.containsAll(listed);
  }

  /** A branch of no length is none. */
  static boolean saysNothing(Setting<?> setting, Column column, String value) {
    Length length = column == Column.STUB ? Quantities.length(value) : null;
    return setting.isMissing() && length != null && length.metres() == 0;
  }
}
