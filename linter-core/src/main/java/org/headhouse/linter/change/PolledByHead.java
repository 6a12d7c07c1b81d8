package org.headhouse.linter.change;

import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Polled;
import org.headhouse.linter.site.PolledBy;
import org.jspecify.annotations.Nullable;

/** What is set at the head unit of how it asks another device. */
final class PolledByHead {
  private PolledByHead() {}

  /** Of a device that stays. */
  static List<ValueChange> changes(TrackedItem item) {
    if (item.before() instanceof Equipment was
        && item.after() instanceof Equipment will
        && (by(was) == PolledBy.HEAD || by(will) == PolledBy.HEAD)) {
      return ItemChanges.polled(was, will).stream()
          .map(
              change ->
                  new ValueChange(
                      change.what() + " of \"" + item.name() + "\"", change.from(), change.to()))
          .toList();
    }
    return List.of();
  }

  /** Who asks an item that is no unit, or null where nobody does. */
  static @Nullable PolledBy by(@Nullable ChainItem item) {
    Polled polled = item instanceof Equipment equipment ? equipment.polled().orNull() : null;
    return polled == null ? null : polled.by().orNull();
  }
}
