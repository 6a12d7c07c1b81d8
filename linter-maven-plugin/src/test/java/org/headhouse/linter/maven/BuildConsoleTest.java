package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.maven.model.Build;
import org.apache.maven.model.Plugin;
import org.apache.maven.project.MavenProject;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildConsoleTest {
  private final RecordingLog log = new RecordingLog();

  @ParameterizedTest
  @CsvSource({"ERROR, error", "WARNING, warn", "NOTE, info", "NONE, info"})
  void linesAreLoggedAtTheirLevel(Level level, String logged) {
    BuildConsole console = new BuildConsole(log, goal -> "mvn linter:" + goal, false);
    console.found(level, "of a site");
    console.report(level, "of the run");
    assertThat(log.lines()).containsExactly(logged + " of a site", logged + " of the run");
  }

  /** The name of a file may hold what would garble a terminal. */
  @Test
  void linesArePrintable() {
    BuildConsole console = new BuildConsole(log, goal -> "mvn linter:" + goal, false);
    console.found(Level.NOTE, "a\u001b[2Jb");
    console.report(Level.WARNING, "c\nd");
    assertThat(log.lines()).containsExactly("info a\uFFFD[2Jb", "warn c d");
  }

  @Test
  void aPageOfARuleIsShownByAGoal() {
    assertThat(
            new BuildConsole(log, goal -> GoalCall.of(goal, null), false)
                .rulePageCall("address.gap"))
        .matches(
            "mvn org\\.headhouse:linter-maven-plugin:\\S+:rules -Dlinter\\.rule=address\\.gap");
  }

  /** Maven knows the prefix of a plugin that the POM of the project has. */
  @Test
  void aProjectWithThePluginNeedsItsPrefixOnly() {
    Plugin plugin = new Plugin();
    plugin.setGroupId("org.headhouse");
    plugin.setArtifactId("linter-maven-plugin");
    MavenProject project = new MavenProject();
    project.setBuild(new Build());
    project.getBuild().addPlugin(plugin);
    assertThat(GoalCall.of("rules", project)).isEqualTo("mvn linter:rules");
  }
}
