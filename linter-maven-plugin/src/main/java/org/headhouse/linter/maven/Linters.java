package org.headhouse.linter.maven;

import java.io.IOException;
import java.util.ServiceConfigurationError;
import org.apache.maven.plugin.MojoExecutionException;
import org.headhouse.linter.SiteLinter;

/** Makes linters that know the rules of all jars the plugin is given as dependencies. */
final class Linters {
  private Linters() {}

  static SiteLinter build(SiteLinter.Builder builder) throws MojoExecutionException {
    return build(builder, Linters.class.getClassLoader());
  }

  static SiteLinter build(SiteLinter.Builder builder, ClassLoader jars)
      throws MojoExecutionException {
    try {
      return builder.rulesFrom(jars).build();
    } catch (IOException unreadable) {
      throw FileTrouble.of("the policy or the device types cannot be read", unreadable);
    } catch (IllegalArgumentException | ServiceConfigurationError wrongRule) {
      throw new MojoExecutionException(
          "a rule of a jar among the plugin's dependencies cannot be used: "
              + wrongRule.getMessage(),
          wrongRule);
    }
  }
}
