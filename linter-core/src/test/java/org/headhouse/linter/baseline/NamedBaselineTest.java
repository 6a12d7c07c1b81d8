package org.headhouse.linter.baseline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which file is the baseline of a linter. */
class NamedBaselineTest {
  private static final String POLICY = "format: 1\nrule-set: 1\nbaseline: ";
  private static final String FAULTY = Example.with("shielded: true", "shielded: false");

  @TempDir private Path folder = Path.of("");
  private Path policy = folder;
  private Path site = folder;

  @BeforeEach
  void aRepository() throws IOException {
    policy = folder.resolve("linter.yaml");
    site = Files.createDirectory(folder.resolve("sites")).resolve("example.yaml");
    Files.writeString(site, FAULTY);
    new OldDebt(folder).take(Map.of("sites/example.yaml", FAULTY));
  }

  private SiteLinter.Builder naming(String name) throws IOException {
    return SiteLinter.builder().policy(Files.writeString(policy, POLICY + name + "\n"));
  }

  private CheckReport check(SiteLinter.Builder builder) throws IOException {
    return builder.build().checkFiles(List.of(site));
  }

  @ParameterizedTest
  @CsvSource({"linter-baseline.jsonl", "./linter-baseline.jsonl", "sites/../linter-baseline.jsonl"})
  void thePolicyNamesItFromItsOwnFolder(String name) throws IOException {
    CheckReport report = check(naming(name));
    assertThat(report.at(Level.NOTE)).isEmpty();
    assertThat(report.known()).hasSize(1);
    assertThat(naming(name).build().baselineFile()).contains(folder.resolve(OldDebt.NAME));
  }

  @Test
  void aCallerMayNameAnotherOrNone() throws IOException {
    Path other = Files.writeString(folder.resolve("none.jsonl"), "{\"baseline-format\":1}\n");
    assertThat(check(naming(OldDebt.NAME).baseline(other)).at(Level.NOTE)).hasSize(1);
    assertThat(check(naming(OldDebt.NAME).withoutBaseline()).at(Level.NOTE)).hasSize(1);
    assertThat(naming("lost").withoutBaseline().build().baselineFile())
        .contains(folder.resolve("lost"));
    assertThat(SiteLinter.builder().build().baselineFile()).isEmpty();
  }

  @Test
  void theOneThatIsNamedHasToBeThere() throws IOException {
    SiteLinter.Builder builder = naming("lost.jsonl").shownFrom(folder);
    assertThatThrownBy(builder::build)
        .isInstanceOf(UnusableBaseline.class)
        .hasMessage("the baseline lost.jsonl does not exist");
    Files.writeString(folder.resolve("lost.jsonl"), "x");
    assertThatThrownBy(builder::build).hasMessageStartingWith("lost.jsonl:1: ");
  }

  @ParameterizedTest
  @CsvSource({"known.jsonl, no file that it could lie beside", "'\"a\\0b\"', that is no path"})
  void aNameThatLeadsNowhere(String name, String reason) throws IOException {
    SiteLinter.Builder builder =
        reason.startsWith("no file")
            ? SiteLinter.builder().policy(SiteInput.text("linter.yaml", POLICY + name + "\n"))
            : naming(name);
    assertThatThrownBy(builder::build)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("linter.yaml names the baseline")
        .hasMessageContaining(reason);
  }

  /** What is wrong in the policy itself is never known before. */
  @Test
  void faultsOfThePolicyAreNew() throws IOException {
    CheckReport report = check(naming(OldDebt.NAME + "\nrules: {address.gapp: {level: note}}"));
    assertThat(report.at(Level.NOTE)).extracting("rule").containsExactly("schema.unknown-key");
    assertThat(report.at(Level.NOTE).get(0).identities()).isEmpty();
  }
}
