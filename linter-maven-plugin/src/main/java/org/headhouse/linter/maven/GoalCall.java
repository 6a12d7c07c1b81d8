package org.headhouse.linter.maven;

import org.apache.maven.project.MavenProject;
import org.headhouse.linter.report.ToolVersion;
import org.jspecify.annotations.Nullable;

/** What a user types to run a goal of this plugin. */
final class GoalCall {
  private static final String KEY = "org.headhouse:linter-maven-plugin";

  private GoalCall() {}

  /**
   * The call of a goal.
   *
   * @param project where it is called; Maven knows the prefix of a plugin that is in its POM
   */
  static String of(String goal, @Nullable MavenProject project) {
    boolean isInPom = project != null && project.getPlugin(KEY) != null;
    String plugin = isInPom ? "linter" : KEY + ToolVersion.text().map(":"::concat).orElse("");
    return "mvn " + plugin + ":" + goal;
  }
}
