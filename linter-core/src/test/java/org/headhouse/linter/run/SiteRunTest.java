package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Notification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteRunTest {
  private static final ParameterNames CALLED = name -> "linter." + name;

  @TempDir private Path folder;

  private SiteRun found() throws UserError {
    SettingsRequest settings =
        new SettingsRequest(folder.resolve("sites"), null, null, new BaseFolder(folder), CALLED);
    return new SitesRequest(settings, SiteNames.USUAL, List.of(), false, 2).find();
  }

  private Path site(String name) throws IOException {
    Path file = folder.resolve("sites/" + name + ".yaml");
    Files.createDirectories(file.getParent());
    return Files.writeString(file, Example.with("site: example", "site: " + name));
  }

  private static CheckReport check(SiteRun run) throws IOException {
    return run.builder().build().check(run.inputs());
  }

  @Test
  void aFileThatGoesBeforeItsTurnIsReported() throws Exception {
    Path going = site("going");
    site("staying");
    SiteRun run = found();
    Files.delete(going);
    CheckReport report = check(run);
    assertThat(report.files()).isEqualTo(2);
    assertThat(report.results()).isEmpty();
    assertThat(report.notifications())
        .extracting(Notification::file, Notification::text)
        .containsExactly(tuple("sites/going.yaml", "the file cannot be read: it does not exist"));
  }

  @Test
  void aRefusedFileIsReportedAndTheOthersAreChecked() throws Exception {
    site("staying");
    Path outside = Files.writeString(folder.resolve("secret"), "password: 1234");
    Files.createSymbolicLink(folder.resolve("sites/out.yaml"), outside);
    CheckReport report = check(found());
    assertThat(report.results()).isEmpty();
    assertThat(report.notifications())
        .singleElement()
        .satisfies(
            one ->
                assertThat(one.text())
                    .startsWith("the file cannot be read: it is a link that leads out")
                    .doesNotContain("password"));
  }

  @Test
  void settingsAreReported() throws Exception {
    site("staying");
    Files.writeString(folder.resolve("device-types.yml"), "");
    Files.writeString(folder.resolve("linter.yaml"), "format: 1\nrule-set: 1\n");
    RecordingConsole console = new RecordingConsole();
    found().reportSettings(console);
    assertThat(console.lines())
        .containsExactly(
            "report note No device types; policy: linter.yaml",
            "report warning "
                + folder.resolve("device-types.yml")
                + " is not read: name it device-types.yaml");
  }

  /** What is likely to be meant as a site or a setting and is not read; nothing else is. */
  @ParameterizedTest
  @CsvSource({
    "sites/TWO.YAML, is not read as a site: name it TWO.yaml",
    "sites/north/two.Yml, is not read as a site: name it north/two.yaml",
    "sites/two.yaml.txt, is not read as a site: name it two.yaml",
    "sites/two.YML.TXT, is not read as a site: name it two.yaml",
    "sites/two.yalm, is not read as a site: name it two.yaml",
    "sites/two.yaml~, ''",
    "sites/two.txt, ''",
    "sites/two.yaml.bak, ''",
    "sites/.two.YAML, ''",
    "sites/.yaml.txt, ''",
    "Linter.yaml, is not read: name it linter.yaml",
    "linter.yml, is not read: name it linter.yaml",
    "linter.yaml.txt, is not read: name it linter.yaml",
    "linter.json, is not read: name it linter.yaml",
    "device_types.yaml, is not read: name it device-types.yaml",
    "DeviceTypes.yml, is not read: name it device-types.yaml",
    "types.yaml, ''",
    "linter-notes.yaml, ''"
  })
  void whatIsLikelyToBeMeant(String file, String report) throws Exception {
    site("staying");
    Files.createDirectories(folder.resolve(file).getParent());
    Files.writeString(folder.resolve(file), "");
    RecordingConsole console = new RecordingConsole();
    found().reportSettings(console);
    List<String> warnings =
        console.lines().stream().filter(line -> line.startsWith("report warning")).toList();
    if (report.isEmpty()) {
      assertThat(warnings).isEmpty();
    } else {
      assertThat(warnings).singleElement().asString().contains(file + " " + report);
    }
  }

  /** What is excluded is left out on purpose. */
  @Test
  void whatIsExcludedIsNotMeant() throws Exception {
    site("staying");
    Files.writeString(folder.resolve("sites/TWO.YAML"), "");
    RecordingConsole console = new RecordingConsole();
    SettingsRequest settings =
        new SettingsRequest(folder.resolve("sites"), null, null, new BaseFolder(folder), CALLED);
    new SitesRequest(settings, SiteNames.USUAL, List.of("*.YAML"), false, 2)
        .find()
        .reportSettings(console);
    assertThat(console.lines()).noneMatch(line -> line.startsWith("report warning"));
  }

  @Test
  void threadsAreCores() throws UserError {
    assertThat(SitesRequest.threads(null, CALLED))
        .isEqualTo(Runtime.getRuntime().availableProcessors());
    assertThat(SitesRequest.threads(5, CALLED)).isEqualTo(5);
    assertThatThrownBy(() -> SitesRequest.threads(0, CALLED))
        .isInstanceOf(UserError.class)
        .hasMessage("linter.threads cannot be 0: use 1 or more");
  }
}
