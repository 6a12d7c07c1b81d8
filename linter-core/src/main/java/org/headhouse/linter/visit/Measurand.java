package org.headhouse.linter.visit;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Voltage;
import org.headhouse.linter.site.WindSpeed;
import org.jspecify.annotations.Nullable;

/** What is measured on a visit, with the words that people write for its units. */
enum Measurand {
  RESISTANCE("62 ohm", "ohm ohms \u03C9|kohm k\u03C9"),
  VOLTAGE("0.29 V", "V volt volts|mV"),
  TIME("85 s", "s sec secs second seconds|min mins minute minutes"),
  WIND("12 m/s", "m/s|km/h kmh kph|mph");

  private final String example;
  private final String units;

  /**
   * @param units the words for each, the first as a site has it
   */
  Measurand(String example, String units) {
    this.example = example;
    this.units = units;
  }

  /** What a row asks for; null where it only asks whether something was seen. */
  static @Nullable Measurand of(VisitEntry entry) {
    return switch (entry) {
      case PAIR_RESISTANCE -> RESISTANCE;
      case IDLE_VOLTAGE -> VOLTAGE;
      case STORM_RESPONSE -> TIME;
      case WIND_LIMIT -> WIND;
      case SITE, READINGS, STALE_RESPONSE, STALE_HOLD -> null;
    };
  }

  /** A value with its unit, for a remedy. */
  String example() {
    return example;
  }

  /** A unit as a site has it, or null for a word that is none; case does not count. */
  @Nullable String unit(String word) {
    for (String unit : units.split("\\|", -1)) {
      List<String> words = List.of(unit.split(" ", -1));
      if (words.stream().anyMatch(word::equalsIgnoreCase)) {
        return words.get(0);
      }
    }
    return null;
  }

  /** Ohms, volts, seconds or metres per second of a value as a site has it; NaN if it is none. */
  double size(String written) {
    return switch (this) {
      case RESISTANCE -> size(Quantities.resistance(written), Resistance::ohms);
      case VOLTAGE -> size(Quantities.measuredVoltage(written), Voltage::volts);
      case TIME -> size(Quantities.interval(written), Interval::seconds);
      case WIND -> size(Quantities.windSpeed(written), WindSpeed::metresPerSecond);
    };
  }

  private static <T> double size(@Nullable T quantity, ToDoubleFunction<T> inSiUnits) {
    return quantity == null ? Double.NaN : inSiUnits.applyAsDouble(quantity);
  }
}
