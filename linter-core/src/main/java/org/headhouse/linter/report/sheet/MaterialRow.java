package org.headhouse.linter.report.sheet;

import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.materials.Material;
import org.headhouse.linter.materials.MaterialCount;
import org.headhouse.linter.materials.MaterialTotals;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.MaterialWords;
import org.jspecify.annotations.Nullable;

/**
 * A material in a table.
 *
 * @param amount as the file has it, or that it is not known
 * @param order with slack, or that it is not known
 */
record MaterialRow(String material, String type, String amount, String order) {
  private static final String NOT_KNOWN = "not known";
  private static final int MANY = 2;

  static MaterialRow of(MaterialCount count, Measure measure, Slack slack) {
    return of(
        count.material(),
        count.type(),
        count.amountIn(measure),
        count.toOrder(measure, slack),
        count.isComplete(),
        measure);
  }

  static MaterialRow of(MaterialTotals.Total total) {
    return of(
        total.material(),
        total.type(),
        total.amountInUnits(),
        total.toOrderInUnits(),
        total.incomplete() == 0,
        total.measure());
  }

  private static MaterialRow of(
      Material material,
      String type,
      @Nullable Double amount,
      @Nullable Double order,
      boolean complete,
      Measure measure) {
    String name = MaterialWords.name(material, MANY);
    return new MaterialRow(
        Character.toUpperCase(name.charAt(0)) + name.substring(1),
        type.isEmpty() ? unknownType(material) : PlainText.sentence(type),
        shown(material, amount, complete, measure),
        shown(material, order, complete, measure));
  }

  /** Of protectors, repeaters and converters the file says no more than where they are. */
  private static String unknownType(Material material) {
    return switch (material) {
      case TERMINATOR, BIAS_RESISTOR -> "value not known";
      case COMM_MODULE -> "for a device type that is not written";
      case CABLE, SURGE_PROTECTOR, REPEATER, CONVERTER -> "";
    };
  }

  private static String shown(
      Material material, @Nullable Double number, boolean complete, Measure measure) {
    if (number == null) {
      return NOT_KNOWN;
    }
    String text =
        material.isLength() ? measure.length(measure.metres(number)) : Shown.plain(number);
    return complete ? text : "at least " + text;
  }
}
