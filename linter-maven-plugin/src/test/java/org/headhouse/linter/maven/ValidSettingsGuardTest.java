package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** No goal makes anything of a policy or of device types that it does not understand. */
class ValidSettingsGuardTest {
  @TempDir private Path folder = Path.of("");

  /** The goals that build upon policy and device types. */
  private enum Goal {
    FIX {
      @Override
      GoalRun in(Path folder) {
        return new GoalRun(new FixMojo(), folder).with("write", true);
      }
    },
    CHANGES {
      @Override
      GoalRun in(Path folder) {
        return new GoalRun(new ChangesMojo(), folder)
            .with("before", folder.resolve("sites").toFile());
      }
    },
    BASELINE {
      @Override
      GoalRun in(Path folder) {
        return new GoalRun(new BaselineMojo(), folder);
      }
    },
    REPORT {
      @Override
      GoalRun in(Path folder) {
        return new GoalRun(new ReportMojo(), folder);
      }
    },
    DRAFT {
      @Override
      GoalRun in(Path folder) {
        return new GoalRun(new DraftMojo(), folder)
            .with("csv", folder.resolve("units.csv").toFile())
            .with("site", "fern-dell")
            .with("readings", List.of("light"));
      }
    };

    abstract GoalRun in(Path folder);
  }

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    write("sites/elm-row.yaml", ElmRow.SITE);
    write("units.csv", "name,cable-to-next (m)\nPropagation,42\nSeedling North,\n");
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @EnumSource(Goal.class)
  void aBrokenPolicyIsReportedAndNothingIsMade(Goal goal) throws IOException {
    write(
        "linter.yaml",
        """
        format: 1
        rule-set: 1
        rules:
          address.kept-free: {parameters: {ranges: [3, 100..109]}}
        """);
    GoalRun run = goal.in(folder);
    String place = "linter.yaml:4:48: error: ";
    assertThatThrownBy(run::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("1 result fails the build:\n" + place);
    assertThat(run.lines()).anyMatch(line -> line.startsWith("error " + place));
    assertNothingIsMade(run, "linter.yaml");
  }

  @ParameterizedTest
  @EnumSource(Goal.class)
  void brokenDeviceTypesAreReportedAndNothingIsMade(Goal goal) throws IOException {
    write("device-types.yaml", "a: [\n");
    GoalRun run = goal.in(folder);
    assertThatThrownBy(run::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("1 result fails the build:\ndevice-types.yaml:")
        .hasMessageEndingWith("[yaml.syntax]");
    assertThat(run.lines()).anyMatch(line -> line.startsWith("error device-types.yaml:"));
    assertNothingIsMade(run, "device-types.yaml");
  }

  private void assertNothingIsMade(GoalRun run, String settings) throws IOException {
    assertThat(run.lines()).noneMatch(line -> line.startsWith("info") && line.contains("fix"));
    assertThat(run.lines()).noneMatch(line -> line.contains("Order of the field work"));
    assertThat(files()).containsExactlyInAnyOrder(settings, "sites/elm-row.yaml", "units.csv");
    assertThat(Files.readString(folder.resolve("sites/elm-row.yaml"))).isEqualTo(ElmRow.SITE);
  }

  @ParameterizedTest
  @EnumSource(Goal.class)
  void whatIsMilderIsReportedAsWell(Goal goal) throws IOException {
    write("linter.yaml", "format: 1\nrule-set: 1\nruls: {a: NO}\n");
    GoalRun run = goal.in(folder);
    assertThatThrownBy(run::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("1 result fails the build:\nlinter.yaml:3:1: error: ");
    assertThat(run.lines())
        .anyMatch(line -> line.startsWith("error linter.yaml:3:1: error: "))
        .anyMatch(line -> line.startsWith("warn linter.yaml:3:11: warning: "))
        .noneMatch(line -> line.contains("0 sites"));
  }

  @Test
  void deviceTypesBesideTheFolderThatIsComparedWithCountAsWell() throws IOException {
    Files.createDirectories(folder.resolve("earlier/sites"));
    write("earlier/sites/elm-row.yaml", ElmRow.SITE);
    write("earlier/device-types.yaml", "a: [\n");
    GoalRun run =
        new GoalRun(new ChangesMojo(), folder)
            .with("before", folder.resolve("earlier/sites").toFile());
    assertThatThrownBy(run::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("1 result fails the build:\nearlier/device-types.yaml:");
    assertThat(run.lines()).noneMatch(line -> line.contains("Order of the field work"));
    assertThat(folder.resolve("target")).doesNotExist();
  }

  @ParameterizedTest
  @EnumSource(Goal.class)
  void validSettingsLetTheGoalGoOn(Goal goal) {
    assertThatCode(goal.in(folder)::execute).doesNotThrowAnyException();
  }
}
