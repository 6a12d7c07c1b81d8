package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.materials.Material;
import org.headhouse.linter.materials.MaterialChange;
import org.headhouse.linter.materials.MaterialCount;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.stability.Internal;

/** Materials in words. */
@Internal
public final class MaterialWords {
  private static final int MANY = 2;

  private MaterialWords() {}

  /** What a change needs, and what it takes off, one line for each material. */
  static List<String> of(MaterialChange change, Slack slack) {
    List<String> lines = new ArrayList<>(needed(change.needed(), slack));
    for (MaterialCount count : change.removed().counts()) {
      if (count.amount() != null) {
        lines.add("Comes off: " + shown(count, count.amount(), change.removed().measure()) + ".");
      }
    }
    if (!change.removed().isEmpty()) {
      lines.add(
          "What comes off is not taken from what is needed: test it before you fit it again.");
    }
    return lines;
  }

  /** What is needed, one line for each material. */
  static List<String> needed(BillOfMaterials bill, Slack slack) {
    List<String> lines = new ArrayList<>();
    for (MaterialCount count : bill.counts()) {
      if (count.amount() != null) {
        lines.add(
            "Needed: "
                + shown(count, count.amount(), bill.measure())
                + order(count, bill.measure(), slack)
                + ".");
      }
      for (String place : count.notCounted()) {
        lines.add("Not counted, " + name(count.material(), MANY) + ": " + place + ".");
      }
    }
    return lines;
  }

  private static String order(MaterialCount count, Measure measure, Slack slack) {
    Double order = count.toOrder(measure, slack);
    return order == null || !count.material().isLength()
        ? ""
        : "; with " + Shown.tolerance(slack.share()) + " of slack " + length(order, measure);
  }

  private static String shown(MaterialCount count, double amount, Measure measure) {
    String type = count.type().isEmpty() ? "" : ", " + count.type();
    return (count.material().isLength()
            ? measure.length(amount) + " of cable"
            : Shown.plain(amount) + " " + name(count.material(), amount))
        + type;
  }

  /** A whole number of metres or feet. */
  public static String length(double units, Measure measure) {
    return Shown.plain(units) + " " + measure.unit();
  }

  /** What people call a material. */
  public static String name(Material material, double number) {
    boolean one = number == 1;
    return switch (material) {
      case CABLE -> "cable";
      case TERMINATOR -> one ? "terminator" : "terminators";
      case BIAS_RESISTOR -> one ? "bias resistor" : "bias resistors";
      case COMM_MODULE -> one ? "communication module" : "communication modules";
      case SURGE_PROTECTOR -> one ? "surge protector" : "surge protectors";
      case REPEATER -> one ? "repeater" : "repeaters";
      case CONVERTER -> one ? "converter" : "converters";
    };
  }
}
