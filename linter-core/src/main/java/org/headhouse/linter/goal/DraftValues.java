package org.headhouse.linter.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Voltage;
import org.headhouse.linter.site.Word;
import org.jspecify.annotations.Nullable;

/** Reads what is given for a draft as parameters, in the words of site files. */
final class DraftValues {
  /** The gap between number and unit, which a command line is easier written without. */
  private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=[0-9]) *(?=[A-Za-z])");

  private DraftValues() {}

  static Parity parity(String property, String written) throws UserError {
    return word(property, written, Parity.values());
  }

  static List<Reading> readings(String property, List<String> written) throws UserError {
    List<Reading> readings = new ArrayList<>();
    for (String word : written) {
      readings.add(word(property, word, Reading.values()));
    }
    return readings;
  }

  static Gauge gauge(String property, String written) throws UserError {
    return quantity(property, written, Quantities::gauge, "a number with AWG or mm2");
  }

  static Resistance resistance(String property, String written) throws UserError {
    return quantity(property, written, Quantities::resistance, "a number with ohm or kohm");
  }

  static Voltage voltage(String property, String written) throws UserError {
    return quantity(property, written, Quantities::voltage, "a number with V or mV");
  }

  private static <T extends Word> T word(String property, String written, T[] known)
      throws UserError {
    return EnumParameter.of(property, written.strip(), known, Word::word);
  }

  private static <T> T quantity(
      String property, String written, Function<String, @Nullable T> reader, String form)
      throws UserError {
    T quantity = reader.apply(BEFORE_UNIT.matcher(written.strip()).replaceFirst(" "));
    if (quantity == null) {
      throw new UserError(property + " cannot be \"" + written + "\": use " + form);
    }
    return quantity;
  }
}
