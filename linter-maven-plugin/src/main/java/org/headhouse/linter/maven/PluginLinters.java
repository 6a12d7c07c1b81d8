package org.headhouse.linter.maven;

import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.Trouble;
import org.headhouse.linter.run.Linters;

/** Makes linters that know the rules of all jars the plugin is given as dependencies. */
final class PluginLinters {
  private static final String HOW_TO_MAKE_IT =
      "correct the name, or make it with mvn org.headhouse:linter-maven-plugin:baseline, and"
          + " -Dlinter.baseline=<file> where the policy does not name it";

  private PluginLinters() {}

  static SiteLinter build(SiteLinter.Builder builder) throws Trouble {
    return Linters.build(
        builder,
        PluginLinters.class.getClassLoader(),
        "among the plugin's dependencies",
        HOW_TO_MAKE_IT);
  }
}
