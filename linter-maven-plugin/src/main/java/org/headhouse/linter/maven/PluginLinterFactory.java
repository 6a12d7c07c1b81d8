package org.headhouse.linter.maven;

import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.LinterFactory;

/** Makes linters that also have the rules of the jars that are dependencies of the plugin. */
final class PluginLinterFactory {
  private static final String HOW_TO_MAKE_IT =
      "correct the name, or make it with mvn org.headhouse:linter-maven-plugin:baseline, and"
          + " -Dlinter.baseline=<file> if the policy does not name it";

  private PluginLinterFactory() {}

  static SiteLinter build(SiteLinter.Builder builder) throws UserError {
    return LinterFactory.build(
        builder,
        PluginLinterFactory.class.getClassLoader(),
        "among the plugin's dependencies",
        HOW_TO_MAKE_IT);
  }
}
