package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.headhouse.linter.files.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A property that no goal takes is not passed over. */
class KnownPropertiesTest {
  private static final KnownProperties KNOWN = KnownProperties.ofPlugin();

  private static Properties properties(String... namesAndValues) {
    Properties properties = new Properties();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      properties.setProperty(namesAndValues[i], namesAndValues[i + 1]);
    }
    return properties;
  }

  @Test
  void thoseOfAllGoalsAreKnown() {
    assertThat(KNOWN.types())
        .containsEntry("linter.failLevel", "java.lang.String")
        .containsEntry("linter.recheck", "boolean")
        .containsKeys(
            "linter.csv",
            "linter.before",
            "linter.rule",
            "linter.fixes",
            "linter.paper",
            "linter.slack")
        .doesNotContainKeys("linter.basedir", "linter.userProperties");
  }

  @ParameterizedTest
  @CsvSource({
    "linter.failLevl, linter.failLevel",
    "linter.faillevel, linter.failLevel",
    "linter.fail-level, linter.failLevel",
    "linter.cvs, linter.csv",
    "linter.devicetype, linter.deviceTypes",
  })
  void theNearestIsNamed(String written, String known) {
    assertThatThrownBy(() -> KNOWN.check(properties(written, "warning"), properties()))
        .isInstanceOf(UserError.class)
        .hasMessage("there is no property " + written + ": use " + known);
  }

  /** A POM may have the plugin's version from the command line. */
  @ParameterizedTest
  @ValueSource(
      strings = {"linter.version", "linter.plugin.version", "linter.home", "linter.zzzzzz"})
  void whereNoneIsNearItIsTheBuildsOwn(String name) {
    assertThatCode(() -> KNOWN.check(properties(name, "1.0.0"), properties()))
        .doesNotThrowAnyException();
  }

  @Test
  void allAreReported() {
    Properties given =
        properties("linter.sitees", "x", "linter.failLevl", "x", "linter.skip", "no");
    assertThatThrownBy(() -> KNOWN.check(given, properties()))
        .hasMessage(
            """
            there is no property linter.failLevl: use linter.failLevel
            there is no property linter.sitees: use linter.sites
            linter.skip cannot be "no": use true or false""");
  }

  @ParameterizedTest
  @ValueSource(strings = {"maybe", "yes", "1", ""})
  void whatIsNoTruthValueIsRefusedWhoeverSetsIt(String value) {
    for (String property : List.of("linter.recheck", "linter.shielded")) {
      Properties wrong = properties(property, value);
      String message = property + " cannot be \"" + value + "\": use true or false";
      assertThatThrownBy(() -> KNOWN.check(wrong, properties())).hasMessage(message);
      assertThatThrownBy(() -> KNOWN.check(properties(), wrong)).hasMessage(message);
    }
  }

  @Test
  void aCommandLineMayHaveMore() {
    Properties given =
        properties("linter.before", "sites", "linter.recheck", "TRUE", "skipTests", "x");
    assertThatCode(() -> KNOWN.check(given, properties())).doesNotThrowAnyException();
  }

  /** A repository may keep something of its own in a property, and a command line set another. */
  @Test
  void aPropertyThatTheProjectHasForItselfIsNoSlip() {
    Properties own = properties("linter.sitee", "1.0.0");
    assertThatCode(() -> KNOWN.check(own, own)).doesNotThrowAnyException();
    assertThatThrownBy(() -> KNOWN.check(own, properties())).isInstanceOf(UserError.class);
  }

  private static Set<AbstractMojo> goals() {
    return Set.of(
        new BaselineMojo(),
        new ChangesMojo(),
        new CheckMojo(),
        new DraftMojo(),
        new FixMojo(),
        new ReportMojo(),
        new RulesMojo(),
        new SchemaMojo());
  }

  @Test
  void everyGoalLooks(@TempDir Path folder) throws Exception {
    for (AbstractMojo goal : goals()) {
      GoalRun run =
          new GoalRun(goal, folder).with("userProperties", properties("linter.failLevl", "note"));
      assertThatThrownBy(run::execute)
          .as(goal.getClass().getSimpleName())
          .isInstanceOf(MojoExecutionException.class)
          .hasMessage("there is no property linter.failLevl: use linter.failLevel");
    }
    try (var files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }
}
