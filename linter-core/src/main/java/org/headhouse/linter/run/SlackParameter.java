package org.headhouse.linter.run;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.materials.Slack;

/** Reads the share of cable that is ordered beyond the measured lengths. */
public final class SlackParameter {
  /** The percentage where nobody says it; common practice, no source. */
  public static final String USUAL = "10";

  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,3})?) ?%?");
  private static final double MOST = 100;

  private SlackParameter() {}

  /**
   * The slack of a number of percent: {@code 10}, {@code 12.5 %}.
   *
   * @throws UserError that says what can be written instead
   */
  public static Slack of(String parameter, String written) throws UserError {
    Matcher percent = PERCENT.matcher(written.strip());
    if (percent.matches()) {
      double number = Double.parseDouble(percent.group(1));
      if (number <= MOST) {
        return new Slack(number / MOST);
      }
    }
    throw new UserError(
        parameter + " cannot be \"" + written + "\": set a percentage from 0 to 100, such as 10");
  }
}
