package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Percentage;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Temperature;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Voltage;
import org.headhouse.linter.site.WindSpeed;
import org.headhouse.linter.site.Word;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * Compares settings by their meaning: {@code 0.5 kohm} is {@code 500 ohm}. What is not understood
 * is never a change.
 */
@Internal
public final class SettingComparison {
  private static final Place NOWHERE = Place.at(Region.START_OF_FILE);

  private SettingComparison() {}

  /** Adds the change of a value to a list, where there is one. */
  static void compare(String what, Setting<?> from, Setting<?> to, List<ValueChange> changes) {
    if (differ(from, to)) {
      changes.add(new ValueChange(what, text(from), text(to)));
    }
  }

  /** The changes of one value: one or none. */
  static List<ValueChange> change(String what, Setting<?> from, Setting<?> to) {
    List<ValueChange> changes = new ArrayList<>(1);
    compare(what, from, to, changes);
    return changes;
  }

  /** The change of a word that has a default. */
  static <T> List<ValueChange> change(String what, Setting<T> from, Setting<T> to, T fallback) {
    return from.isFaulty() || to.isFaulty() || from.or(fallback).equals(to.or(fallback))
        ? List.of()
        : List.of(new ValueChange(what, text(from.or(fallback)), text(to.or(fallback))));
  }

  /** Whether two settings that are understood mean different things. */
  public static boolean differ(Setting<?> from, Setting<?> to) {
    return !from.isFaulty() && !to.isFaulty() && !Objects.equals(meaning(from), meaning(to));
  }

  /** A setting of something that may be missing as a whole. */
  static <S> Setting<?> in(@Nullable S owner, Function<S, Setting<?>> part) {
    return owner == null ? new Setting.Missing<>(NOWHERE) : part.apply(owner);
  }

  /** As the file has it, or null where nothing is given. */
  static @Nullable String text(Setting<?> setting) {
    return setting instanceof Setting.Given<?> given ? text(given.value()) : null;
  }

  private static String text(Object value) {
    if (value instanceof Word word) {
      return word.word();
    }
    if (value instanceof Quantity quantity) {
      return quantity.written();
    }
    if (value instanceof Termination termination) {
      return termination.written();
    }
    if (value instanceof List<?> list) {
      return list.stream()
          .map(item -> item instanceof Setting<?> setting ? text(setting) : text((Object) item))
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return String.valueOf(value);
  }

  static @Nullable String meaning(Setting<?> setting) {
    return setting instanceof Setting.Given<?> given ? meaning(given.value()) : null;
  }

  private static String meaning(Object value) {
    if (value instanceof Quantity quantity) {
      return meaning(quantity);
    }
    if (value instanceof Termination termination) {
      return termination.resistance() == null
          ? "none"
          : meaning((Quantity) termination.resistance())
              + (termination.capacitance() == null
                  ? ""
                  : " " + meaning((Quantity) termination.capacitance()));
    }
    if (value instanceof List<?> list) {
      return list.stream()
          .map(item -> item instanceof Setting<?> setting ? meaning(setting) : meaning(item))
          .map(String::valueOf)
          .sorted()
          .collect(Collectors.joining(", "));
    }
    return text(value);
  }

  private static String meaning(Quantity quantity) {
    if (quantity instanceof Gauge.Awg awg) {
      return awg.number() + " AWG";
    }
    double number;
    if (quantity instanceof Length length) {
      number = length.metres();
    } else if (quantity instanceof Resistance resistance) {
      number = resistance.ohms();
    } else if (quantity instanceof Capacitance capacitance) {
      number = capacitance.farads();
    } else if (quantity instanceof Voltage voltage) {
      number = voltage.volts();
    } else if (quantity instanceof Interval interval) {
      number = interval.seconds();
    } else if (quantity instanceof Temperature temperature) {
      number = temperature.celsius();
    } else if (quantity instanceof WindSpeed speed) {
      number = speed.metresPerSecond();
    } else if (quantity instanceof Percentage share) {
      number = share.share();
    } else {
      number = ((Gauge.Area) quantity).squareMillimetres();
    }
    return String.format(Locale.ROOT, "%.9g", number);
  }
}
