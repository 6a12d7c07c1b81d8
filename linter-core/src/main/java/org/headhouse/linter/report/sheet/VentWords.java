package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Vents;

/**
 * What a unit does with its vents, for people. Where the file does not say, nobody knows yet: a
 * unit that says nothing of vents may have some.
 */
final class VentWords {
  /** Printed where the answer is needed at the unit, and the file does not have it. */
  static final String ASK = "not known: ask";

  private VentWords() {}

  /** Whether it moves vents, or may do so because the file does not say. */
  static boolean mayMove(Unit unit) {
    return !unit.vents().is(Vents.NONE);
  }

  /** {@code roof and side}, {@code no vents}, or that it is not known. */
  static String vents(Unit unit) {
    if (!mayMove(unit)) {
      return "no vents";
    }
    return unit.vents().optional().map(PlainText::word).orElse("not known: look");
  }

  /** What its vents do once readings stop: {@code close}. */
  static String fallback(Unit unit) {
    return unit.onStaleReadings().optional().map(VentWords::words).orElse(ASK);
  }

  /**
   * The units whose vents do not close by themselves once readings stop, as they are set, joined;
   * empty for none. All of them: whoever reads it closes these by hand.
   */
  static String stayingOpen(Site site) {
    List<String> names =
        site.units().stream().filter(StaleResponse::staysOpen).map(PlainText::name).toList();
    return SpokenText.names(names, names.size());
  }

  /** Whether it moves vents and, as the file sets it, no reading of the wind closes them. */
  static boolean getsNoWind(Unit unit) {
    return mayMove(unit)
        && unit.outdoor()
            .optional()
            .filter(outdoor -> outdoor.source(Reading.WIND_SPEED).is(ReadingSource.NONE))
            .isPresent();
  }

  private static String words(StaleAction action) {
    return switch (action) {
      case CLOSE -> "close";
      case CLOSE_AND_ALARM -> "close, with an alarm";
      case HOLD -> "stay where they are";
      case ALARM -> "stay where they are, with an alarm";
    };
  }

  /** How long it goes on with a reading that does not come anew. */
  static String staleAfter(Unit unit) {
    return time(unit.staleAfter());
  }

  /** How long its slowest vent takes to shut. */
  static String closeTime(Unit unit) {
    return time(unit.closeTime());
  }

  private static String time(Setting<Interval> setting) {
    return setting.optional().map(Interval::written).map(PlainText::name).orElse(ASK);
  }
}
