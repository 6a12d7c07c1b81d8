package org.headhouse.linter.rules.commissioning;

import org.headhouse.linter.figures.MeasuringPlace;
import org.headhouse.linter.figures.ReadingUnit;
import org.headhouse.linter.figures.SegmentReadings;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.ReadingRange;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Voltage;

/** What {@code commissioning.measured-off} says of a reading outside its range. */
final class ReadingMessages {
  private static final String CROSSED =
      "a negative voltage means that the leads of the meter or the conductors of the pair are"
          + " crossed";
  private static final String UNCROSS =
      "measure again with the red lead on D1; if it stays negative, find the run on which the pair"
          + " is crossed";

  private ReadingMessages() {}

  static Message ofResistance(MeasuringPlace place, Resistance measured, ReadingRange accepted) {
    return new Message(
        "the pair measured "
            + measured.written()
            + " at "
            + place.called()
            + "; "
            + ReadingUnit.of(measured.written()).range(accepted)
            + " is acceptable there",
        measured.ohms() < accepted.low()
            ? "a terminator too many, one of too low a value or a short is likely"
            : "a terminator is missing or the pair has an open or poor joint",
        "isolate the supplies, then find and fix it, or correct the file to what is really fitted;"
            + " then measure again");
  }

  /** Of a line that a bias holds, or that needs one. */
  static Message ofHeldLine(MeasuringPlace place, Voltage measured, ReadingRange accepted) {
    ReadingUnit unit = ReadingUnit.of(measured.written());
    String fact = fact(place, measured) + "; " + unit.range(accepted) + " is acceptable there";
    if (measured.volts() < 0) {
      return new Message(fact, CROSSED, UNCROSS);
    }
    boolean under = measured.volts() < Levels.RECEIVER_THRESHOLD_VOLTS;
    boolean low = measured.volts() < accepted.low();
    return new Message(
        fact,
        under
            ? "a receiver needs 200 mV: bias is missing or weak, or more loads the line than is"
                + " written"
            : low
                ? "with the error of the meter it may be under the 200 mV that a receiver needs, or"
                    + " more loads the line than is written"
                : "a terminator is missing, or a second bias holds the line",
        "find and fix it, or correct the file to what is really fitted; then measure again");
  }

  /** Of a line on which no bias is written and none is needed. */
  static Message ofUnheldLine(MeasuringPlace place, Voltage measured) {
    ReadingUnit unit = ReadingUnit.of(measured.written());
    return new Message(
        fact(place, measured)
            + ", over "
            + unit.atLeast(SegmentReadings.UNHELD_VOLTS)
            + ", and no bias is written there",
        measured.volts() < 0
            ? "a bias is fitted somewhere that the file does not have; " + CROSSED
            : "a bias is fitted somewhere that the file does not have: no voltage of this line is"
                + " computed right",
        measured.volts() < 0
            ? UNCROSS + "; then find the bias and add it to the file"
            : "find the bias and add it to the file; a device may have it built in or switched on");
  }

  private static String fact(MeasuringPlace place, Voltage measured) {
    return "the idle voltage measured " + measured.written() + " at " + place.called();
  }
}
