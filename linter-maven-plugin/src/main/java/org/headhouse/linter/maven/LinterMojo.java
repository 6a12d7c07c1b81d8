package org.headhouse.linter.maven;

import java.nio.file.InvalidPathException;
import java.util.Properties;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProject;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.GoalRequest;
import org.jspecify.annotations.Nullable;

/**
 * A goal of this plugin: it turns its parameters into a request and runs it. It refuses properties
 * that no goal knows.
 */
abstract class LinterMojo extends AbstractMojo {
  /** What the build was started with. */
  @Parameter(defaultValue = "${session.userProperties}", readonly = true)
  private Properties userProperties = new Properties();

  /** What the project sets. */
  @Parameter(defaultValue = "${project.properties}", readonly = true)
  private Properties projectProperties = new Properties();

  @Parameter(defaultValue = "${project}", readonly = true)
  private @Nullable MavenProject project;

  @Override
  public final void execute() throws MojoExecutionException, MojoFailureException {
    if (isSkipped()) {
      getLog().info("The goal is skipped by linter.skip.");
      return;
    }
    try {
      checkProperties();
      BuildConsole console =
          new BuildConsole(getLog(), goal -> GoalCall.of(goal, project), LogColours.areShown());
      BuildOutcome.of(request().run(console, PluginLinterFactory::build));
    } catch (UserError error) {
      throw BuildOutcome.error(error);
    } catch (InvalidPathException noName) {
      // The name of a file that is given, that git knows, or of a baseline.
      throw BuildOutcome.error(UserError.of(noName));
    }
  }

  /** Whether the goal is to do nothing. */
  boolean isSkipped() {
    return false;
  }

  /**
   * What the parameters ask for.
   *
   * @throws UserError where one of them cannot be used
   */
  abstract GoalRequest request() throws UserError;

  /** The descriptor is read only where there is a property to check. */
  private void checkProperties() throws UserError {
    if (hasAny(userProperties) || hasAny(projectProperties)) {
      KnownProperties.ofPlugin().check(userProperties, projectProperties);
    }
  }

  private static boolean hasAny(Properties properties) {
    return properties.stringPropertyNames().stream()
        .anyMatch(name -> name.startsWith(PluginParameters.name("")));
  }
}
