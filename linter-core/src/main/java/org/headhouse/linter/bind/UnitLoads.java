package org.headhouse.linter.bind;

import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/** Reads the load of a device: a fraction is text to YAML, and a whole unit load is a number. */
final class UnitLoads {
  private UnitLoads() {}

  static Setting<Double> read(ValueReader value) {
    Cursor cursor = value.cursor();
    if (cursor == null) {
      return value.parsed(Quantities::unitLoad);
    }
    Double load = cursor.node() instanceof Scalar scalar ? load(scalar) : null;
    if (load != null && load > Format.HEAVIEST_UNIT_LOAD && isText(cursor)) {
      return tooHeavy(value.issues(), cursor);
    }
    if (load == null || load <= 0 || load > Format.HEAVIEST_UNIT_LOAD) {
      value.issues().askSchema();
      return new Setting.Faulty<>(cursor.place());
    }
    return new Setting.Given<>(load, cursor.place());
  }

  private static @Nullable Double load(Scalar scalar) {
    return switch (scalar.type()) {
      case TEXT -> Quantities.unitLoad(scalar.text());
      case INTEGER, FLOAT -> Numbers.decimal(scalar);
      case NULL, BOOLEAN -> null;
    };
  }

  private static boolean isText(Cursor cursor) {
    return cursor.node() instanceof Scalar scalar && scalar.type() == CoreType.TEXT;
  }

  /** The schema bounds numbers, but cannot compute a fraction. */
  private static Setting<Double> tooHeavy(BindingIssues issues, Cursor cursor) {
    issues.report(
        "schema.out-of-range",
        cursor.place(),
        new Message(
            "the unit load is above " + Format.HEAVIEST_UNIT_LOAD,
            "a line drives " + Format.HEAVIEST_UNIT_LOAD + " unit loads in all",
            "write the unit load of one device, such as 1/8"));
    return new Setting.Faulty<>(cursor.place());
  }
}
