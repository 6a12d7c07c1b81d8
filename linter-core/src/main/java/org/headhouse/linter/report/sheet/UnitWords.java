package org.headhouse.linter.report.sheet;

import java.util.Optional;
import org.headhouse.linter.site.Unit;

/** Descriptions of a unit that several sheets use. */
final class UnitWords {
  private UnitWords() {}

  /** {@code 3}, or that it is not written. */
  static String address(Unit unit) {
    return unit.address().optional().map(String::valueOf).orElse(PlainText.NOT_WRITTEN);
  }

  /** The title of its type, else the id; empty where none is written. */
  static String type(Unit unit) {
    Optional<String> id = unit.deviceType().optional();
    return PlainText.name(unit.type().title().optional().or(() -> id).orElse(""));
  }

  static String addressAndType(Unit unit) {
    String id = PlainText.name(unit.deviceType().or(""));
    return "address " + address(unit) + (id.isEmpty() ? "" : ", " + id);
  }
}
