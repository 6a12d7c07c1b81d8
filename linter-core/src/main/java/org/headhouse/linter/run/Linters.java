package org.headhouse.linter.run;

import java.io.IOException;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.UnusableBaseline;
import org.headhouse.linter.files.Trouble;

/** Makes linters, and says in plain words why one cannot be made. */
public final class Linters {
  private Linters() {}

  /**
   * A linter that also knows the rules of other jars.
   *
   * @param jars what they are loaded by
   * @param place where those jars are looked for, to be told where a rule cannot be used
   * @param howToMakeBaseline a remedy for one that is missing
   * @throws Trouble where a file of settings cannot be read, or a rule cannot be used
   */
  public static SiteLinter build(
      SiteLinter.Builder builder, ClassLoader jars, String place, String howToMakeBaseline)
      throws Trouble {
    try {
      return builder.rulesFrom(jars).build();
    } catch (UnusableBaseline baseline) {
      throw new Trouble(
          baseline.getMessage() + (baseline.isMissing() ? ": " + howToMakeBaseline : ""), baseline);
    } catch (IOException unreadable) {
      throw Trouble.of("the policy, the device types or the baseline cannot be read", unreadable);
    } catch (IllegalArgumentException wrong) {
      throw new Trouble(
          wrong.getMessage() + "; rules of other jars are looked for " + place, wrong);
    }
  }
}
