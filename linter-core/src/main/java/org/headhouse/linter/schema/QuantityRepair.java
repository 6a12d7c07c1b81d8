package org.headhouse.linter.schema;

import static java.util.Map.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes a quantity in the form that files have: its number, a space and the known unit. */
final class QuantityRepair {
  private static final String NUMBER =
      "(-?[0-9_]*[.,]?[0-9_]+(?:[eE][-+]?[0-9]{1,2})?|-?[0-9_]+\\.)";
  private static final Pattern NUMBER_UNIT = Pattern.compile(NUMBER + "\\s*([^0-9\\s.,].*)?");
  private static final Pattern UNIT_NUMBER = Pattern.compile("([^0-9]+?)\\s*" + NUMBER);
  private static final Pattern EXAMPLE = Pattern.compile("-?[0-9.]+ +([A-Za-z%][A-Za-z0-9/]*).*");
  private static final int LONGEST_NUMBER = 20;

  /** How people write the units, in lower case; what a key allows decides between several. */
  private static final Map<String, List<String>> UNITS =
      Map.ofEntries(
          entry("m", List.of("m", "min")),
          entry("metre", List.of("m")),
          entry("metres", List.of("m")),
          entry("meter", List.of("m")),
          entry("meters", List.of("m")),
          entry("ft", List.of("ft")),
          entry("ft.", List.of("ft")),
          entry("foot", List.of("ft")),
          entry("feet", List.of("ft")),
          entry("'", List.of("ft")),
          entry("r", List.of("ohm")),
          entry("ohm", List.of("ohm")),
          entry("ohms", List.of("ohm")),
          entry("\u03C9", List.of("ohm")),
          entry("k", List.of("kohm")),
          entry("kohm", List.of("kohm")),
          entry("kohms", List.of("kohm")),
          entry("kiloohm", List.of("kohm")),
          entry("kiloohms", List.of("kohm")),
          entry("k\u03C9", List.of("kohm")),
          entry("v", List.of("V")),
          entry("volt", List.of("V")),
          entry("volts", List.of("V")),
          entry("mv", List.of("mV")),
          entry("millivolt", List.of("mV")),
          entry("millivolts", List.of("mV")),
          entry("ms", List.of("ms")),
          entry("msec", List.of("ms")),
          entry("millisecond", List.of("ms")),
          entry("milliseconds", List.of("ms")),
          entry("s", List.of("s")),
          entry("sec", List.of("s")),
          entry("secs", List.of("s")),
          entry("second", List.of("s")),
          entry("seconds", List.of("s")),
          entry("min", List.of("min")),
          entry("mins", List.of("min")),
          entry("minute", List.of("min")),
          entry("minutes", List.of("min")),
          entry("ns", List.of("ns")),
          entry("nanosecond", List.of("ns")),
          entry("nanoseconds", List.of("ns")),
          entry("m/s", List.of("m/s")),
          entry("mps", List.of("m/s")),
          entry("km/h", List.of("km/h")),
          entry("kmh", List.of("km/h")),
          entry("kph", List.of("km/h")),
          entry("mph", List.of("mph")),
          entry("%", List.of("%")),
          entry("percent", List.of("%")),
          entry("awg", List.of("AWG")),
          entry("mm2", List.of("mm2")),
          entry("mm\u00B2", List.of("mm2")),
          entry("mm^2", List.of("mm2")),
          entry("sqmm", List.of("mm2")),
          entry("nf", List.of("nF")),
          entry("pf", List.of("pF")),
          entry("c", List.of("degC")),
          entry("\u00B0c", List.of("degC")),
          entry("degc", List.of("degC")),
          entry("deg c", List.of("degC")),
          entry("celsius", List.of("degC")),
          entry("f", List.of("degF")),
          entry("\u00B0f", List.of("degF")),
          entry("degf", List.of("degF")),
          entry("deg f", List.of("degF")),
          entry("fahrenheit", List.of("degF")));

  private static final Set<String> OF_A_COUNTRY =
      Set.of("m", "ft", "degC", "degF", "m/s", "km/h", "mph");

  private QuantityRepair() {}

  /** The quantity in the form that is accepted, where number and unit can be recognised. */
  static Optional<String> of(ActualValue actual, ExpectedValue expected) {
    return of(actual.text().strip(), expected);
  }

  /** The same of a text. */
  static Optional<String> of(String text, ExpectedValue expected) {
    int plus = text.indexOf('+', 1);
    boolean exponent = plus > 0 && Character.toLowerCase(text.charAt(plus - 1)) == 'e';
    List<String> units = unitsOfExamples(expected);
    Stream<String> guesses =
        plus < 0 || exponent
            ? quantities(text, units)
            : quantities(text.substring(0, plus).strip(), units)
                .flatMap(
                    first ->
                        quantities(text.substring(plus + 1).strip(), List.of())
                            .map(second -> first + " + " + second));
    return guesses.filter(expected::accepts).findFirst();
  }

  /**
   * What a bare number can mean where people of two countries write different units for it; empty
   * where it has a unit, or only one can be meant.
   */
  static List<String> withEachUnit(ActualValue actual, ExpectedValue expected) {
    if (!actual.isNumber()) {
      return List.of();
    }
    List<String> units = unitsOfExamples(expected).stream().filter(OF_A_COUNTRY::contains).toList();
    List<String> meant =
        quantities(actual.text(), null, units).filter(expected::accepts).distinct().toList();
    return meant.size() > 1 ? meant : List.of();
  }

  private static List<String> unitsOfExamples(ExpectedValue expected) {
    List<String> units = new ArrayList<>();
    for (JsonNode example : expected.get("examples")) {
      Matcher matcher = EXAMPLE.matcher(example.asText());
      if (matcher.matches()) {
        units.add(matcher.group(1));
      }
    }
    return units;
  }

  /**
   * @param units what a bare number may have meant, the likeliest first
   */
  private static Stream<String> quantities(String text, List<String> units) {
    Matcher usual = NUMBER_UNIT.matcher(text);
    Matcher reversed = UNIT_NUMBER.matcher(text);
    if (usual.matches()) {
      return quantities(usual.group(1), usual.group(2), units);
    }
    return reversed.matches()
        ? quantities(reversed.group(2), reversed.group(1), units)
        : Stream.empty();
  }

  private static Stream<String> quantities(
      String number, @Nullable String unit, List<String> units) {
    List<String> known =
        unit == null ? units : UNITS.getOrDefault(unit.toLowerCase(Locale.ROOT), List.of());
    return plain(number).stream().flatMap(digits -> known.stream().map(one -> digits + " " + one));
  }

  /** The number in plain digits; empty where a comma may mark thousands. */
  private static Optional<String> plain(String number) {
    if (number.matches(".*,[0-9]{3}") || number.length() > LONGEST_NUMBER) {
      return Optional.empty();
    }
    try {
      String digits = number.replace("_", "").replace(',', '.');
      return Optional.of(new BigDecimal(digits).toPlainString());
    } catch (NumberFormatException noNumber) {
      return Optional.empty();
    }
  }
}
