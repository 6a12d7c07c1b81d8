package org.headhouse.linter.maven;

import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    Map<String, Object> usual =
        Map.of(
            "basedir", folder.toFile(),
            "sites", folder.resolve("sites").toFile(),
            "includes", List.of("**/*.yaml"),
            "outputDirectory", folder.resolve("target").toFile());
    usual.forEach((parameter, value) -> field(parameter).ifPresent(field -> set(field, value)));
  }

  /** Sets a parameter. */
  GoalRun with(String parameter, Object value) {
    set(field(parameter).orElseThrow(), value);
    return this;
  }

  private void set(Field field, Object value) {
    try {
      field.setAccessible(true);
      field.set(goal, value);
    } catch (IllegalAccessException closed) {
      throw new AssertionError(closed);
    }
  }

  private Optional<Field> field(String name) {
    for (Class<?> one = goal.getClass(); one != null; one = one.getSuperclass()) {
      for (Field field : one.getDeclaredFields()) {
        if (field.getName().equals(name)) {
          return Optional.of(field);
        }
      }
    }
    return Optional.empty();
  }

  void execute() throws MojoExecutionException, MojoFailureException {
    goal.execute();
  }

  /** What was logged, each line after its level. */
  List<String> lines() {
    return log.lines();
  }
}
