package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the goal prints and writes. */
class DiagnoseMojoTest {
  private static final String SITE =
      """
      format: 1
      site: elm-row
      stage: planned
      weather-station: {at: A, readings: [light]}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
      chain:
        - {unit: A, role: head, address: 1, conductors: [A, B], termination: 120 ohm, cable-to-next: 50 m}
        - {unit: B, role: follower, address: 2, conductors: [A, B], termination: 120 ohm}
      """;

  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    write("elm-row", SITE);
  }

  private void write(String site, String text) throws IOException {
    Files.writeString(folder.resolve("sites/" + site + ".yaml"), text);
  }

  private GoalRun run() {
    return new GoalRun(new DiagnoseMojo(), folder);
  }

  private String json() throws IOException {
    return Files.readString(folder.resolve("target/diagnosis.json")).replaceAll("\\s", "");
  }

  @Test
  void readingsOfTheFileAreDiagnosedAndCautionsComeFirst() throws Exception {
    write("elm-row", SITE + "as-found: [{at: A, pair-resistance: 118 ohm}]\n");
    GoalRun run = run();
    run.execute();
    assertThat(String.join("\n", run.lines()))
        .containsSubsequence(
            "lock it off", "elm-row: \"A\" to \"B\"", "do not fit", "is missing", "Next: measure");
    assertThat(json())
        .contains("\"agrees\":false", "{\"fault\":\"terminator-missing\",\"at\":[\"B\"]");
  }

  @Test
  void readingsOfTheParameterCountInPlaceOfTheFiles() throws Exception {
    write("elm-row", SITE + "as-found: [{at: A, pair-resistance: 118 ohm}]\n");
    run().with("asFound", "{at: A, pair-resistance: 61 ohm}").execute();
    assertThat(json()).contains("\"agrees\":true");
  }

  @Test
  void aSiteWithoutReadingsIsLeftOut() throws Exception {
    GoalRun run = run();
    run.execute();
    assertThat(String.join("\n", run.lines())).contains("No site has readings");
    assertThat(json()).isEqualTo("{\"sites\":[]}");
  }

  @Test
  void readingsThatAreNotUnderstoodAreAnErrorInPlainWords() {
    assertThatThrownBy(run().with("asFound", "118 ohm")::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageStartingWith(
            "the readings are not understood: enter them in the form of as-found");
    assertThat(folder.resolve("target/diagnosis.json")).doesNotExist();
  }

  @Test
  void readingsOfOneLineAreNotThoseOfTwo() throws Exception {
    write("oak-row", SITE.replace("elm", "oak"));
    assertThatThrownBy(run().with("asFound", "{at: A, pair-resistance: 61 ohm}")::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage("the readings belong to one line: name the one file of that line");
  }
}
