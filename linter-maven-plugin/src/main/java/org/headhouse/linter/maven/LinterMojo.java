package org.headhouse.linter.maven;

import java.nio.file.InvalidPathException;
import java.util.Properties;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;

/** A goal of this plugin: it refuses properties that no goal knows. */
abstract class LinterMojo extends AbstractMojo {
  /** What the build was started with. */
  @Parameter(defaultValue = "${session.userProperties}", readonly = true)
  private Properties userProperties = new Properties();

  /** What the project sets. */
  @Parameter(defaultValue = "${project.properties}", readonly = true)
  private Properties projectProperties = new Properties();

  /** What is wrong is told in plain words, whatever goal it is. */
  @Override
  public final void execute() throws MojoExecutionException, MojoFailureException {
    try {
      work();
    } catch (UserError trouble) {
      throw BuildOutcome.error(trouble);
    } catch (InvalidPathException noName) {
      // The name of a file that is given, that git knows, or of a baseline.
      throw BuildOutcome.error(UserError.of(noName));
    }
  }

  /** Does what the goal is for. */
  abstract void work() throws MojoExecutionException, MojoFailureException, UserError;

  /** Most builds give no property, and need not know which there are. */
  final void checkProperties() throws UserError {
    if (hasAny(userProperties) || hasAny(projectProperties)) {
      KnownProperties.ofPlugin().check(userProperties, projectProperties);
    }
  }

  private static boolean hasAny(Properties properties) {
    return properties.stringPropertyNames().stream()
        .anyMatch(name -> name.startsWith(PluginParameters.name("")));
  }
}
