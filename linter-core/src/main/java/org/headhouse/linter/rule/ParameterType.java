package org.headhouse.linter.rule;

import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.headhouse.linter.site.AddressRange;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * How a parameter is written in the policy.
 *
 * @param <T> what a rule gets
 */
public interface ParameterType<T> {
  /** How large all values of a list are together, at most: see {@link #size}. */
  int LARGEST_LIST = 2000;

  /** The value of what the policy's file has as text, or empty where it is none. */
  Optional<T> parse(String written);

  /** What can be written, for messages and documentation: {@code one of "head", "every-unit"}. */
  String describe();

  /** The words that can be written, or empty where any number of values can be. */
  default List<String> words() {
    return List.of();
  }

  /**
   * The type of each item where a list can be written, and empty where none can. A single text then
   * stands for a list of one.
   */
  default Optional<ParameterType<?>> items() {
    return Optional.empty();
  }

  /** The value of a list of which every item is a value of {@link #items()}. */
  default Optional<T> parse(List<String> written) {
    return Optional.empty();
  }

  /**
   * How much of a list a value takes up, by the work that it makes for a check: 1 for one that is
   * compared at once.
   */
  default long size(String written) {
    return 1;
  }

  /** Why a text is no value, as a clause. */
  default String whyNot(String written) {
    return "it must be " + describe();
  }

  /** What to do about a text that is no value, as an imperative clause; empty for an example. */
  default Optional<String> remedy(String written) {
    return Optional.empty();
  }

  /** One of some words. */
  static ParameterType<String> choice(String... words) {
    List<String> known = List.of(words);
    return new ParameterType<>() {
      @Override
      public Optional<String> parse(String written) {
        return known.contains(written) ? Optional.of(written) : Optional.empty();
      }

      @Override
      public String describe() {
        return "one of " + String.join(", ", known);
      }

      @Override
      public List<String> words() {
        return known;
      }
    };
  }

  /** A voltage with its unit. */
  static ParameterType<Voltage> voltage() {
    return of("a voltage such as 20 mV", Quantities::voltage);
  }

  /** A length with its unit. */
  static ParameterType<Length> length() {
    return of("a length such as 20 m", Quantities::length);
  }

  /** A stretch of time with its unit. */
  static ParameterType<Interval> interval() {
    return of("a time such as 100 ms", Quantities::interval);
  }

  /** A rise time in nanoseconds. */
  static ParameterType<Interval> riseTime() {
    return of("a rise time such as 30 ns", Quantities::riseTime);
  }

  /** A capacitance with its unit. */
  static ParameterType<Capacitance> capacitance() {
    return of("a capacitance such as 60 pF", Quantities::capacitance);
  }

  /** A stretch of the calendar: days, weeks, months or years; zero for {@code never}. */
  static ParameterType<Period> period() {
    return new PeriodType();
  }

  /** A share, written in percent. */
  static ParameterType<Double> percent() {
    return of(
        "a share such as 70 %",
        written ->
            written.matches("[0-9]{1,6}(\\.[0-9]{1,6})? *%")
                ? Double.parseDouble(written.substring(0, written.length() - 1).strip()) / 100
                : null);
  }

  /** A number without a unit. */
  static ParameterType<Double> number() {
    return of(
        "a number such as 0.66",
        written ->
            written.matches("[0-9]{1,9}(\\.[0-9]{1,9})?") ? Double.parseDouble(written) : null);
  }

  /** A count; as many as anybody can mean. */
  static ParameterType<Integer> count() {
    return of(
        "a whole number such as 1",
        written -> written.matches("[0-9]{1,3}") ? Integer.valueOf(written) : null);
  }

  /**
   * The values of a type from one to another, both included.
   *
   * @param measure what is compared
   * @param least as the policy would write it
   * @param most as the policy would write it
   */
  static <T> ParameterType<T> within(
      ParameterType<T> type, ToDoubleFunction<T> measure, String least, String most) {
    return new RangeType<>(type, measure, least, most);
  }

  /** A share between two others, all written in percent. */
  static ParameterType<Double> percent(String least, String most) {
    return within(percent(), Double::doubleValue, least, most);
  }

  /** A text of one line. */
  static ParameterType<String> text() {
    return of(
        "a text of at most " + Format.LONGEST_TEXT + " characters on one line",
        written ->
            written.isBlank()
                    || written.length() > Format.LONGEST_TEXT
                    || written.chars().anyMatch(Character::isISOControl)
                ? null
                : written);
  }

  /** A regular expression that is matched against a whole text. */
  static ParameterType<TextPattern> pattern() {
    return new PatternType();
  }

  /** Addresses that are kept free on a line: from 2, since 1 is the head unit's, to 255. */
  static ParameterType<AddressRange> addresses() {
    return new AddressType();
  }

  /** Any number of values of a type; {@code []} for none. */
  static <T> ParameterType<List<T>> listOf(ParameterType<T> type) {
    return new ListType<>(type);
  }

  private static <T> ParameterType<T> of(String description, Function<String, @Nullable T> parser) {
    return new ParameterType<>() {
      @Override
      public Optional<T> parse(String written) {
        return Optional.ofNullable(parser.apply(written));
      }

      @Override
      public String describe() {
        return description;
      }
    };
  }
}
