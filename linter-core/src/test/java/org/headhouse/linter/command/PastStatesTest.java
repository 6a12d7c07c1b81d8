package org.headhouse.linter.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.jgit.api.Git;
import org.headhouse.linter.revision.TestRepository;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was proved, or in operation, before the revision that a file is compared with: common
 * practice, no source.
 */
class PastStatesTest {
  private static final String PROVED =
      """
      format: 1
      site: example
      stage: commissioned
      weather-station: {at: Propagation, readings: [light]}
      line: {baud: 9600, parity: even, stop-bits: 1, cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}}
      defaults: {head: {comm-module: fitted}, follower: {comm-module: fitted, conductors: [A, B], outdoor: head, vents: none}}
      chain:
        - {unit: Propagation, role: head, address: 1, conductors: [A, B, G], termination: 120 ohm, outdoor: local, vents: none, cable-to-next: 40 m}
        - {unit: Seedlings, role: follower, address: 2, firmware: "3.1", termination: none, cable-to-next: 60 m}
        - {unit: Hardening, role: follower, address: 3, firmware: "3.1", termination: 120 ohm}
      commissioning:
        date: 2026-03-14
        by: R.O.
        measured: {pair-resistance: 62 ohm, elsewhere: [{at: Hardening, pair-resistance: 62 ohm}]}
        outdoor-readings-seen: [Seedlings, Hardening]
        storm-response-seen: []
        stale-response-seen: []
      """;

  private static final String CHANGED =
      PROVED
          .replace("2, firmware: \"3.1\"", "2, firmware: \"3.2\"")
          .replace("3, firmware: \"3.1\"", "3, firmware: \"3.2\"");

  private static final String RENEWED =
      CHANGED
          + "  renewed: [{date: 2026-06-02, by: R.O., reason: firmware, outdoor-readings-seen:"
          + " [Hardening]}]\n";

  @TempDir private Path folder;

  private void commit(String text) throws Exception {
    TestRepository repository = new TestRepository(folder);
    repository.write("sites/example.yaml", text);
    repository.commit();
  }

  private static String planned(String text) {
    return text.replace("stage: commissioned", "stage: planned");
  }

  private static String withoutRecord(String text) {
    return planned(text).substring(0, planned(text).indexOf("commissioning:"));
  }

  private String check(String since) {
    return CommandCall.of(folder, "--since=" + since).out();
  }

  /** The change was made before the base: what was proved last shows what is to be proved. */
  @Test
  void aBaseThatWasPlannedIsNoProof() throws Exception {
    commit(PROVED);
    commit(planned(CHANGED));
    commit(RENEWED);
    assertThat(check("HEAD~2")).contains("error: the record is renewed after a change without");
    String since = check("HEAD~1");
    assertThat(since).isEqualTo(check("HEAD~2"));
    assertThat(since).contains("the outdoor readings at \"Seedlings\"");
  }

  /** What is not committed yet is compared too, as before a commit. */
  @Test
  void anOldRecordIsNotEnough() throws Exception {
    commit(PROVED);
    commit(planned(CHANGED));
    Files.writeString(folder.resolve("sites/example.yaml"), CHANGED);
    assertThat(check("HEAD"))
        .contains("error: the line has changed, but its record is still that of 2026-03-14");
  }

  @Test
  void aRecordThatWasTakenOutComesBack() throws Exception {
    commit(PROVED);
    commit(withoutRecord(CHANGED));
    Files.writeString(folder.resolve("sites/example.yaml"), CHANGED);
    assertThat(check("HEAD"))
        .contains("error: the line has changed, but its record is still that of 2026-03-14");
  }

  @Test
  void whatIsProvedAgainIsEnough() throws Exception {
    commit(PROVED);
    commit(planned(CHANGED));
    commit(RENEWED.replace("seen: [Hardening]}]", "seen: [Seedlings, Hardening]}]"));
    assertThat(check("HEAD~1")).doesNotContain("[change.");
  }

  @Test
  void whatWasPlannedAndNotChangedIsProved() throws Exception {
    commit(PROVED);
    commit(planned(PROVED));
    commit(PROVED);
    assertThat(check("HEAD~1")).doesNotContain("[change.");
  }

  /** Only states before the base count: one between it and now is what is judged. */
  @Test
  void theProofIsLookedForBeforeTheBase() throws Exception {
    commit(PROVED);
    commit(planned(CHANGED));
    commit(RENEWED);
    commit(RENEWED + "# Corrected.\n");
    assertThat(check("HEAD~2")).contains("error: the record is renewed after a change without");
  }

  /** As in a clone without older revisions: the base is all there is. */
  @Test
  void withoutTheProofTheBaseIsCompared() throws Exception {
    commit(planned(CHANGED));
    commit(CHANGED);
    assertThat(check("HEAD~1"))
        .contains("warning: the line was planned for a change, but its record is still that of");
  }

  /** The site is the same, but its types say that it is landed the other way round. */
  @Test
  void otherDeviceTypesAreAChangeOfTheLine() throws Exception {
    TestRepository repository = new TestRepository(folder);
    String typed = PROVED.replace("follower: {", "follower: {device-type: eight-way, ");
    String types = "format: 1\ndevice-types: [{id: eight-way, positive-terminal: B}]\n";
    repository.write("device-types.yaml", types);
    commit(typed);
    repository.write("device-types.yaml", types.replace("terminal: B", "terminal: A"));
    assertThat(check("HEAD"))
        .contains(
            "error: what the device types say of the line has changed, but its record is still"
                + " that of 2026-03-14");
    assertThat(CommandCall.of(folder, "changes", "--since=HEAD").out())
        .contains("the device type \"eight-way\": positive-terminal from B to A");
    // It is planned for something else meanwhile: the proof is that of the old types.
    commit(planned(typed));
    commit(typed);
    assertThat(check("HEAD~1")).contains("error: what the device types say of the line");
    assertThat(CommandCall.of(folder, "report", "--outputDirectory=out").code()).isZero();
    assertThat(Files.readString(folder.resolve("out/example-certificate.html")))
        .contains("The line was changed after its record, and nobody proved the change.");
  }

  private Path moved() throws IOException {
    Path place = Files.createDirectory(folder.resolve("sites/example")).resolve("site.yaml");
    return Files.move(folder.resolve("sites/example.yaml"), place);
  }

  /** The history of the file is in its old place, which the base has too. */
  @Test
  void aFileThatIsMovedKeepsItsProof() throws Exception {
    commit(PROVED);
    commit(planned(CHANGED));
    Files.writeString(moved(), CHANGED);
    assertThat(check("HEAD"))
        .contains("error: the line has changed, but its record is still that of 2026-03-14");
  }

  private String fix() throws IOException {
    return fix(folder.resolve("sites/example.yaml"));
  }

  private String fix(Path file) throws IOException {
    Files.writeString(
        file, Files.readString(file).replace("address: 3", "address: 5").replace("2,", "3,"));
    assertThat(CommandCall.of(folder, "fix", "--write").code()).isZero();
    return Files.readString(file);
  }

  /** The record went a commit earlier, but the line is live: nothing at a unit is renumbered. */
  @Test
  void aLineThatWasLiveIsNotRenumbered() throws Exception {
    commit(PROVED);
    commit(withoutRecord(PROVED));
    commit(withoutRecord(PROVED) + "# Planned anew.\n");
    assertThat(fix()).contains("address: 3,", "address: 5,");
  }

  @Test
  void aLineThatWasLiveInAnotherFileIsNotRenumbered() throws Exception {
    commit(PROVED);
    commit(withoutRecord(PROVED));
    assertThat(fix(moved())).contains("address: 3,", "address: 5,");
  }

  @Test
  void aLineThatNeverWasLiveIsRenumbered() throws Exception {
    commit(withoutRecord(PROVED) + "# A first plan.\n");
    commit(withoutRecord(PROVED));
    assertThat(fix()).contains("address: 2,", "address: 3,");
  }

  /** Nobody can say what was before the first revision of a clone that lacks the older ones. */
  @Test
  void aHistoryThatIsNotWholeMayBeThatOfALiveLine() throws Exception {
    commit(withoutRecord(PROVED) + "# A first plan.\n");
    commit(withoutRecord(PROVED));
    try (Git git = Git.open(folder.toFile())) {
      Files.writeString(
          folder.resolve(".git/shallow"), git.getRepository().resolve("HEAD").getName() + "\n");
    }
    assertThat(fix()).contains("address: 3,", "address: 5,");
  }
}
