package org.headhouse.linter.rule;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A stretch of the calendar; {@code never} is the period of no length. */
final class PeriodType implements ParameterType<Period> {
  private static final String NEVER = "never";

  /** Longer than any line is used without a new one. */
  private static final int MOST_YEARS = 30;

  private static final Pattern WRITTEN =
      Pattern.compile("([1-9][0-9]{0,3}) *(day|week|month|year)s?");

  @Override
  public Optional<Period> parse(String written) {
    if (written.equals(NEVER)) {
      return Optional.of(Period.ZERO);
    }
    Matcher matcher = WRITTEN.matcher(written);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int number = Integer.parseInt(matcher.group(1));
    Period period =
        switch (matcher.group(2)) {
          case "day" -> Period.ofDays(number);
          case "week" -> Period.ofWeeks(number);
          case "month" -> Period.ofMonths(number);
          default -> Period.ofYears(number);
        };
    LocalDate start = LocalDate.EPOCH;
    return Optional.of(period).filter(one -> !start.plus(one).isAfter(start.plusYears(MOST_YEARS)));
  }

  @Override
  public String describe() {
    return "a period of at most " + MOST_YEARS + " years such as 12 months or 1 year, or never";
  }

  @Override
  public Optional<String> remedy(String written) {
    return Optional.of("write for example 12 months");
  }
}
