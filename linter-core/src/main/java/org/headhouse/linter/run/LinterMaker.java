package org.headhouse.linter.run;

import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;

/** Makes linters for whoever runs them: a user's own rules are elsewhere for each. */
@FunctionalInterface
public interface LinterMaker {
  /**
   * A linter of these settings.
   *
   * @throws UserError where one of the files cannot be read, or a rule cannot be used
   */
  SiteLinter make(SiteLinter.Builder builder) throws UserError;
}
