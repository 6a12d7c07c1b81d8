package org.headhouse.linter.rules.bias;

import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.line.BiasChoice;
import org.headhouse.linter.line.BiasSizing;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.jspecify.annotations.Nullable;

/** The bias that holds a segment without any, from the supply that most line drivers have. */
record NewBias(String words, @Nullable FixDraft fix) {
  /** Common practice, no source. */
  private static final double USUAL_SUPPLY_VOLTS = 5;

  private static final String PLAIN_NAME = "[A-Za-z][A-Za-z0-9 ]*[A-Za-z0-9]";

  static NewBias of(SegmentLine line, LineSettings settings, double wantedVolts) {
    SegmentNetwork network = line.hasFaultThatDistortsFigures() ? null : line.network();
    if (network == null) {
      return new NewBias(
          "isolate the supply, fit bias resistors of 450 to 650 ohm at one place, and record"
              + " them under bias",
          null);
    }
    BiasChoice choice =
        BiasSizing.choice(network.spread(), line.measuredAt(), USUAL_SUPPLY_VOLTS, wantedVolts);
    if (choice == null) {
      return new NewBias(
          "fit terminators with a capacitor in series, such as 120 ohm + 1 nF, and bias resistors"
              + " of 450 to 650 ohm",
          null);
    }
    if (!network.drives(choice.item(), BiasRemedy.resistors(choice, USUAL_SUPPLY_VOLTS))) {
      return new NewBias(
          "divide the segment with a repeater, and fit bias resistors of 450 to 650 ohm in each"
              + " part: undivided, they overload its line drivers",
          null);
    }
    ChainItem item = line.segment().items().get(choice.item());
    String each = BiasRemedy.each(choice);
    String side = item instanceof Repeater ? ", side " + line.segment().side(item).word() : "";
    return new NewBias(
        "isolate the supply, fit bias resistors of "
            + each
            + " each at "
            + item.called()
            + side
            + BiasRemedy.range(choice)
            + ", from 5 V, and record them under bias",
        fix(line, settings, item, each));
  }

  private static @Nullable FixDraft fix(
      SegmentLine line, LineSettings settings, ChainItem item, String each) {
    String name = item.name().orNull();
    if (name == null || !settings.bias().isMissing()) {
      return null;
    }
    String at = name.matches(PLAIN_NAME) ? name : "'" + name.replace("'", "''") + "'";
    String side = item instanceof Repeater ? ", side: " + line.segment().side(item).word() : "";
    return FixDraft.proposed(
        "Fit bias resistors of " + each + " each at " + item.called(),
        Edit.addKey(
            settings.place(),
            "cable",
            "bias",
            "[{at: " + at + side + ", resistors: " + each + ", supply: 5 V}]"));
  }
}
