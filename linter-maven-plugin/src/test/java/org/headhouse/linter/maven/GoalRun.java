package org.headhouse.linter.maven;

import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;

/** Runs a goal in this process, with parameters set as Maven sets them. */
final class GoalRun {
  private final AbstractMojo goal;
  private final RecordingLog log = new RecordingLog();

  /** A goal in a folder with the folder sites. */
  GoalRun(AbstractMojo goal, Path folder) {
    this.goal = goal;
    goal.setLog(log);
    with("basedir", folder.toFile());
    with("sites", folder.resolve("sites").toFile());
    if (goal instanceof SitesMojo) {
      with("includes", List.of("**/*.yaml"));
      with("outputDirectory", folder.resolve("target").toFile());
    }
  }

  /** Sets a parameter. */
  GoalRun with(String parameter, Object value) {
    try {
      Field field = field(goal.getClass(), parameter);
      field.setAccessible(true);
      field.set(goal, value);
    } catch (IllegalAccessException closed) {
      throw new AssertionError(closed);
    }
    return this;
  }

  private static Field field(Class<?> type, String name) {
    for (Class<?> one = type; one != null; one = one.getSuperclass()) {
      for (Field field : one.getDeclaredFields()) {
        if (field.getName().equals(name)) {
          return field;
        }
      }
    }
    throw new AssertionError(type + " has no parameter " + name);
  }

  void execute() throws MojoExecutionException, MojoFailureException {
    goal.execute();
  }

  /** What was logged, each line after its level. */
  List<String> lines() {
    return log.lines();
  }
}
