package org.headhouse.linter.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.Example;
import org.headhouse.linter.command.CommandProcess.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The hook of the README, in a repository of git. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class HookIT {
  private static final String BROKEN = Example.with("address: 3", "address: 2");

  @TempDir private Path work;
  @TempDir private Path home;

  @BeforeEach
  void repository() throws Exception {
    boolean installed = CommandProcess.shell(work, "command -v git").code() == 0;
    if (System.getenv("CI") == null) {
      assumeThat(installed).as("git is on the path, or the hook is not tried").isTrue();
    }
    git("init", "-q", ".");
    Path hook = Files.createDirectories(work.resolve(".git/hooks")).resolve("pre-commit");
    Files.writeString(hook, readme());
    Files.setPosixFilePermissions(hook, PosixFilePermissions.fromString("rwxr-xr-x"));
    write("sites/example.yaml", Example.SITE);
    stage();
    assertThat(commit().code()).isZero();
  }

  private static String readme() throws IOException {
    Matcher hook =
        Pattern.compile("<!-- example: hook -->\n```sh\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("../README.md")));
    assertThat(hook.find()).isTrue();
    return hook.group(1);
  }

  private Ended git(String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(List.of("-c", "user.name=Nobody", "-c", "user.email=nobody@example.invalid"));
    command.addAll(List.of(arguments));
    return CommandProcess.run(
        work,
        Map.of(
            "HOME", home.toString(),
            "XDG_CONFIG_HOME", home.toString(),
            "GIT_CONFIG_NOSYSTEM", "1",
            "LINTER_JAR", CommandProcess.JAR.toString()),
        command);
  }

  private Path write(String name, String text) throws IOException {
    Path file = work.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private void stage() throws Exception {
    assertThat(git("add", "-A").code()).isZero();
  }

  private Ended commit(String... more) throws Exception {
    List<String> arguments = new ArrayList<>(List.of("commit", "-q", "-m", "Change the site"));
    arguments.addAll(List.of(more));
    return git(arguments.toArray(String[]::new));
  }

  private int commits() throws Exception {
    return (int) git("log", "--format=%h").out().lines().count();
  }

  @Test
  void aBrokenSiteIsNotCommitted() throws Exception {
    write("sites/example.yaml", BROKEN);
    stage();
    Ended refused = commit();
    assertThat(refused.code()).isNotZero();
    assertThat(refused.out() + refused.err())
        .contains("sites/example.yaml:25:14: error: ")
        .contains("[address.duplicate]");
    assertThat(commits()).isEqualTo(1);
    write("sites/example.yaml", Example.with("address: 3", "address: 3 # seen"));
    stage();
    assertThat(commit().code()).isZero();
    assertThat(commits()).isEqualTo(2);
  }

  @Test
  void whatIsStagedCountsAndNotWhatIsInTheWorkTree() throws Exception {
    write("sites/example.yaml", BROKEN);
    stage();
    write("sites/example.yaml", Example.SITE);
    assertThat(commit().code()).isNotZero();
    write("sites/example.yaml", Example.SITE + "# staged\n");
    stage();
    write("sites/example.yaml", BROKEN);
    assertThat(commit().code()).isZero();
  }

  @Test
  void aCommitOfSingleFilesIsSeenAsGitMakesIt() throws Exception {
    write("sites/other.yaml", BROKEN.replace("site: example", "site: other"));
    stage();
    write("sites/example.yaml", Example.SITE + "# seen\n");
    assertThat(commit("--", "sites/example.yaml").code()).isZero();
    assertThat(commit("--", "sites/other.yaml").code()).isNotZero();
  }

  @Test
  void otherSitesAreNotLookedAtUnlessWhatHoldsForAllChanges() throws Exception {
    write("sites/other.yaml", BROKEN.replace("site: example", "site: other"));
    stage();
    assertThat(commit("--no-verify").code()).isZero();
    write("sites/example.yaml", Example.SITE + "# seen\n");
    stage();
    assertThat(commit().code()).isZero();
    write("linter.yaml", "format: 1\nrule-set: 1\n");
    stage();
    assertThat(commit().code()).isNotZero();
  }

  @Test
  void namesAreWhatTheyAre() throws Exception {
    write("sites/-b ä.yaml", BROKEN);
    write("sites/new\nline.yaml", Example.SITE);
    stage();
    Ended refused = commit();
    assertThat(refused.code()).isNotZero();
    assertThat(refused.out() + refused.err())
        .contains("sites/-b ä.yaml:25:14: error: ")
        .contains("2 sites, ");
  }

  @Test
  void aCommitWithoutSitesNeedsNoLinter() throws Exception {
    write("README.md", "# Our sites\n");
    stage();
    Ended ended = commit();
    assertThat(ended.code()).isZero();
    assertThat(ended.out() + ended.err()).isEmpty();
  }

  @Test
  void aSiteThatIsGoneIsNoFault() throws Exception {
    Files.delete(work.resolve("sites/example.yaml"));
    stage();
    assertThat(commit().code()).isZero();
  }

  private static final String LIVE =
      Example.with("stage: planned", "stage: commissioned")
          + """
          commissioning:
            date: 2026-03-14
            by: R.O.
            measured: {pair-resistance: 60 ohm}
            outdoor-readings-seen: [Seedling North, Hardening Bay]
          """;

  /** The record says nothing of the line that this commit makes. */
  @Test
  void aCommitThatMakesARecordOutOfDateIsRefused() throws Exception {
    write("sites/example.yaml", LIVE);
    stage();
    assertThat(commit("--no-verify").code()).isZero();
    write("sites/example.yaml", LIVE.replace("cable-to-next: 40 m", "cable-to-next: 52 m"));
    stage();
    Ended refused = commit();
    assertThat(refused.code()).isNotZero();
    assertThat(refused.out() + refused.err()).contains("[change.record-kept]");
  }

  @Test
  void aLiveSiteThatIsGoneIsReported() throws Exception {
    write("sites/example.yaml", LIVE);
    stage();
    assertThat(commit("--no-verify").code()).isZero();
    Files.delete(work.resolve("sites/example.yaml"));
    stage();
    Ended ended = commit();
    assertThat(ended.code()).isZero();
    assertThat(ended.out() + ended.err()).contains("[change.commissioned-removed]");
  }

  /** Without the policy, or the device types, sites may be at fault that nobody touched. */
  @Test
  void allSitesAreLookedAtWherePolicyGoes() throws Exception {
    write("linter.yaml", "format: 1\nrule-set: 1\nrules: {address.duplicate: {level: none}}\n");
    write("sites/other.yaml", BROKEN.replace("site: example", "site: other"));
    stage();
    assertThat(commit().code()).isZero();
    Files.delete(work.resolve("linter.yaml"));
    stage();
    assertThat(commit().code()).isNotZero();
  }
}
