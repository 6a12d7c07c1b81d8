package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectInserter;
import org.headhouse.linter.Example;
import org.headhouse.linter.revision.TestRepository;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command compares with an earlier revision as the plugin does. */
class SinceTest {
  private static final String COMMISSIONED = Example.with("stage: planned", "stage: commissioned");

  @TempDir private Path folder;
  private TestRepository repository = new TestRepository(Path.of(""));
  private String out = "";
  private String err = "";

  @BeforeEach
  void repository() throws Exception {
    repository = new TestRepository(folder);
    repository.write("sites/example.yaml", COMMISSIONED);
    repository.write("sites/other.yaml", COMMISSIONED.replace("site: example", "site: other"));
    repository.commit();
  }

  private int run(String... arguments) {
    CommandCall call = CommandCall.of(folder, arguments);
    out = call.out();
    err = call.err();
    return call.code();
  }

  private void readdressed() throws IOException {
    repository.write(
        "sites/example.yaml",
        COMMISSIONED.replace("address: 2", "address: 9").replace("address: 3", "address: 2"));
  }

  @Test
  void aChangeOfALiveLineIsSeenInANamedFileAndInAFolder() throws IOException {
    readdressed();
    run("sites/example.yaml");
    assertThat(out).doesNotContain("[change.");
    for (List<String> files : List.of(List.of("sites/example.yaml"), List.<String>of())) {
      List<String> arguments = new ArrayList<>(List.of("--since=HEAD"));
      arguments.addAll(files);
      assertThat(run(arguments.toArray(String[]::new))).isEqualTo(1);
      assertThat(out).contains("[change.commissioned-readdressed]");
    }
  }

  @Test
  void anUnchangedSiteIsAsWithoutIt() {
    int code = run();
    String without = out;
    assertThat(run("--since=HEAD")).isEqualTo(code);
    assertThat(out).isEqualTo(without);
  }

  /** A site that was not asked for is not gone. */
  @Test
  void aSiteIsGoneOnlyWhereAllAreChecked() throws IOException {
    Files.delete(folder.resolve("sites/other.yaml"));
    run("--since=HEAD", "sites/example.yaml");
    assertThat(out).doesNotContain("[change.commissioned-removed]");
    run("--since=HEAD");
    assertThat(out).contains("[change.commissioned-removed]");
  }

  /** A file that is moved is found by its id, as the plugin finds it. */
  @Test
  void aMovedFileIsFoundByItsId() throws IOException {
    readdressed();
    Files.createDirectories(folder.resolve("sites/example"));
    Files.move(folder.resolve("sites/example.yaml"), folder.resolve("sites/example/site.yaml"));
    run("--since=HEAD", "sites/example/site.yaml");
    assertThat(out).contains("[change.commissioned-readdressed]");
  }

  @Test
  void aRevisionThatIsNotThereIsTrouble() {
    assertThat(run("--since=HEAD~7")).isEqualTo(2);
    assertThat(err)
        .endsWith(
            "error: --since: there is no revision HEAD~7: use one that git log shows, or a branch"
                + " or tag that is fetched\n");
  }

  /** As in a clone that leaves out what files held before ("git clone --filter=blob:none"). */
  @Test
  void whatAFileHeldBeforeMustBeThere() throws IOException {
    readdressed();
    lose(COMMISSIONED);
    for (List<String> files : List.of(List.of("sites/example.yaml"), List.<String>of())) {
      List<String> arguments = new ArrayList<>(List.of("--since=HEAD", "--failLevel=none"));
      arguments.addAll(files);
      assertThat(run(arguments.toArray(String[]::new))).isEqualTo(2);
      assertThat(out + err)
          .contains(
              "sites/example.yaml: what has changed cannot be checked, since in HEAD the file"
                  + " cannot be read: Missing blob ");
    }
  }

  @Test
  void whatASiteThatIsGoneHeldBeforeMustBeThere() throws IOException {
    Files.delete(folder.resolve("sites/other.yaml"));
    lose(COMMISSIONED.replace("site: example", "site: other"));
    assertThat(run("--since=HEAD", "--failLevel=none")).isEqualTo(2);
    assertThat(out + err).contains("sites/other.yaml: what has changed cannot be checked");
  }

  /** It may be the one that a file held whose content is lost. */
  @Test
  void aSiteThatMayHaveBeenElsewhereIsNotTakenForNew() throws IOException {
    readdressed();
    Files.move(folder.resolve("sites/example.yaml"), folder.resolve("sites/example.yml"));
    lose(COMMISSIONED);
    assertThat(run("--since=HEAD", "--failLevel=none", "sites/example.yml")).isEqualTo(2);
    assertThat(out + err).contains("sites/example.yml: what has changed cannot be checked");
  }

  /** Somebody has to be able to correct it. */
  @Test
  void aFileThatWasNoYamlIsAWarning() throws Exception {
    repository.write("sites/example.yaml", "site: [");
    repository.commit();
    repository.write("sites/example.yaml", COMMISSIONED);
    int code = run("sites/example.yaml");
    assertThat(run("--since=HEAD", "sites/example.yaml")).isEqualTo(code);
    assertThat(out + err)
        .contains(
            "what has changed cannot be checked, since in HEAD the file cannot be read as YAML");
  }

  /** Takes a content out of the repository. */
  private void lose(String content) throws IOException {
    try (ObjectInserter.Formatter formatter = new ObjectInserter.Formatter()) {
      String id = formatter.idFor(Constants.OBJ_BLOB, content.getBytes(UTF_8)).getName();
      Files.delete(
          folder.resolve(".git/objects").resolve(id.substring(0, 2)).resolve(id.substring(2)));
    }
  }
}
