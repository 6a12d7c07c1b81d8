package org.headhouse.linter.maven;

import java.io.IOException;
import java.util.ServiceConfigurationError;
import org.apache.maven.plugin.MojoExecutionException;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.UnusableBaseline;

/** Makes linters that know the rules of all jars the plugin is given as dependencies. */
final class Linters {
  private static final String HOW_TO_MAKE_IT =
      ": correct the name, or make it with mvn org.headhouse:linter-maven-plugin:baseline, and"
          + " -Dlinter.baseline=<file> where the policy does not name it";

  private Linters() {}

  static SiteLinter build(SiteLinter.Builder builder) throws MojoExecutionException {
    return build(builder, Linters.class.getClassLoader());
  }

  static SiteLinter build(SiteLinter.Builder builder, ClassLoader jars)
      throws MojoExecutionException {
    try {
      return builder.rulesFrom(jars).build();
    } catch (UnusableBaseline baseline) {
      throw new MojoExecutionException(
          baseline.getMessage() + (baseline.isMissing() ? HOW_TO_MAKE_IT : ""), baseline);
    } catch (IOException unreadable) {
      throw FileTrouble.of(
          "the policy, the device types or the baseline cannot be read", unreadable);
    } catch (IllegalArgumentException | ServiceConfigurationError wrongRule) {
      throw new MojoExecutionException(
          "a rule of a jar among the plugin's dependencies cannot be used: "
              + wrongRule.getMessage(),
          wrongRule);
    }
  }
}
