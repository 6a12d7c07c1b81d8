package org.headhouse.linter.run;

import java.io.IOException;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.UnusableBaseline;
import org.headhouse.linter.files.UserError;

/** Makes linters, and says in plain words why one cannot be made. */
public final class LinterFactory {
  private LinterFactory() {}

  /**
   * A linter that also knows the rules of other jars. The libraries are in the caller's jar.
   *
   * @param jars what they are loaded by
   * @param place where those jars are looked for; it is reported where a rule cannot be used
   * @param howToMakeBaseline a remedy for one that is missing
   * @throws UserError where a file of settings cannot be read, or a rule cannot be used
   */
  public static SiteLinter build(
      SiteLinter.Builder builder, ClassLoader jars, String place, String howToMakeBaseline)
      throws UserError {
    try {
      return builder.rulesFrom(jars).withoutTrial().build();
    } catch (UnusableBaseline baseline) {
      throw new UserError(
          baseline.getMessage() + (baseline.isMissing() ? ": " + howToMakeBaseline : ""), baseline);
    } catch (IOException unreadable) {
      throw UserError.of("the policy, the device types or the baseline cannot be read", unreadable);
    } catch (IllegalArgumentException wrong) {
      throw new UserError(
          wrong.getMessage() + "; rules of other jars are looked for " + place, wrong);
    }
  }
}
