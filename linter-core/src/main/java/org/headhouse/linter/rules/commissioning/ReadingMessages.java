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
      "a negative voltage means that the meter leads or the pair are crossed";
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
            ? "an extra terminator, one of too low a value, or a short is likely"
            : "a terminator is missing, or a joint of the pair is open or poor",
        "isolate all supplies, find and fix the fault, and measure again; correct the file only"
            + " if it does not show what is fitted");
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
            ? "a receiver needs 200 mV: bias is missing or weak, or the line has more load than is"
                + " in the file"
            : low
                ? "with the error of the meter it may be under the 200 mV that a receiver needs, or"
                    + " the line has more load than is in the file"
                : "a terminator is missing, or a second bias holds the line",
        "find the fault and fix it with all supplies isolated, then measure again; correct the"
            + " file only if it does not show what is fitted");
  }

  /** Of a line on which no bias is written and none is needed. */
  static Message ofUnheldLine(MeasuringPlace place, Voltage measured) {
    ReadingUnit unit = ReadingUnit.of(measured.written());
    return new Message(
        fact(place, measured)
            + ", beyond ±"
            + unit.atLeast(SegmentReadings.UNHELD_VOLTS)
            + ", and the file has no bias there",
        measured.volts() < 0
            ? "a bias is fitted somewhere that is not in the file; " + CROSSED
            : "a bias is fitted somewhere that is not in the file: every computed voltage of"
                + " this line is wrong",
        measured.volts() < 0
            ? UNCROSS + "; then find the bias and add it to the file"
            : "find the bias and add it to the file; a device may have it built in or switched on");
  }

  private static String fact(MeasuringPlace place, Voltage measured) {
    return "the idle voltage measured " + measured.written() + " at " + place.called();
  }
}
