package org.headhouse.linter.maven;

import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.Console;

/** What a goal is asked for, with parameters that can be used: immutable, and run once. */
interface GoalRequest {
  /**
   * Does the work of the goal.
   *
   * @throws MojoFailureException where sites or settings are broken
   * @throws MojoExecutionException where the tool could not look at all of them
   * @throws UserError where the work cannot be done
   */
  void run(Console console) throws MojoFailureException, MojoExecutionException, UserError;
}
