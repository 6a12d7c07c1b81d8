package org.headhouse.linter.run;

import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;

/** Makes linters: plugin and command look for a user's own rules in different places. */
@FunctionalInterface
public interface LinterMaker {
  /**
   * A linter of these settings.
   *
   * @throws UserError where one of the files cannot be read, or a rule cannot be used
   */
  SiteLinter make(SiteLinter.Builder builder) throws UserError;
}
