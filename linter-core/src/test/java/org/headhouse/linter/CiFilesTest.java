package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * The ready files for CI: their shell steps run on a fresh clone, and the page shows what is so.
 */
@EnabledOnOs(OS.LINUX)
class CiFilesTest {
  private static final Path TOP = Path.of("..").toAbsolutePath().normalize();
  private static final String BROKEN = Example.with("address: 3", "address: 2");

  @TempDir private Path work = Path.of("");
  private Path clone = Path.of("");
  private Path programs = Path.of("");

  @BeforeEach
  void repository() throws Exception {
    assumeThat(sh(work, Map.of(), "command -v git"))
        .as("git is on the path, or nothing is tried")
        .isNotEmpty();
    Path origin = Files.createDirectories(work.resolve("origin/sites")).getParent();
    Files.writeString(origin.resolve("sites/example.yaml"), Example.SITE);
    sh(origin, Map.of(), "git init -q -b main . && git add -A && git commit -qm Start");
    Files.writeString(origin.resolve("sites/example.yaml"), BROKEN);
    sh(origin, Map.of(), "git checkout -qb change && git commit -qam Change");
    clone = work.resolve("clone");
    sh(work, Map.of(), "git clone -q origin clone");
    programs = Files.createDirectory(work.resolve("programs"));
    program("mvn", "printf '%s\\n' \"$@\"");
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    // Stands for the jar: the very command, from the classes of this build.
    program(
        "java",
        "shift 2; exec '"
            + java
            + "' -cp '"
            + classPath()
            + "' org.headhouse.linter.command.Main \"$@\"");
  }

  private static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
        .map(entry -> Path.of(entry).toAbsolutePath().toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  private void program(String name, String script) throws IOException {
    Path file = Files.writeString(programs.resolve(name), "#!/bin/sh\n" + script + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  /** What a script prints, the standard error as well. */
  private String sh(Path folder, Map<String, String> environment, String script) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder("sh", "-c", script).directory(folder.toFile()).redirectErrorStream(true);
    builder
        .environment()
        .putAll(
            Map.of(
                "HOME",
                work.toString(),
                "GIT_CONFIG_NOSYSTEM",
                "1",
                "GIT_AUTHOR_NAME",
                "Nobody",
                "GIT_AUTHOR_EMAIL",
                "nobody@example.invalid",
                "GIT_COMMITTER_NAME",
                "Nobody",
                "GIT_COMMITTER_EMAIL",
                "nobody@example.invalid",
                "LINTER_JAR",
                "linter.jar",
                "PATH",
                programs + ":" + System.getenv("PATH")));
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), UTF_8);
    process.waitFor();
    return out;
  }

  private static Map<?, ?> yaml(String file) throws IOException {
    return new Yaml(new SafeConstructor(new LoaderOptions()))
        .load(Files.readString(TOP.resolve(file)));
  }

  private static Object at(Object from, Object... path) {
    Object here = from;
    for (Object step : path) {
      here = here instanceof List<?> list ? list.get((Integer) step) : ((Map<?, ?>) here).get(step);
      assertThat(here).as("%s of %s", step, List.of(path)).isNotNull();
    }
    return here;
  }

  @Test
  void theStepOfTheWorkflowComparesWithWhereTheBranchBegan() throws Exception {
    Map<?, ?> workflow = yaml("sample-sites/.github/workflows/check-sites.yml");
    assertThat(at(workflow, "jobs", "check", "steps", 0, "with", "fetch-depth")).isEqualTo(0);
    String step = (String) at(workflow, "jobs", "check", "steps", 2, "run");
    String start = sh(clone, Map.of(), "git rev-parse origin/main").strip();
    assertThat(sh(clone, Map.of("BASE_REF", "main"), step).lines())
        .contains("validate", "-Dlinter.format=github", "-Dlinter.since=" + start);
    assertThat(sh(clone, Map.of("BASE_REF", ""), step)).doesNotContain("since", "changedOnly");
  }

  @Test
  void theScriptOfThePipelineComparesWithTheBaseOfTheRequest() throws Exception {
    Map<?, ?> job = (Map<?, ?>) at(yaml("sample-sites/.gitlab-ci.yml"), "check-sites");
    assertThat(at(job, "variables", "GIT_DEPTH")).isEqualTo("0");
    String script = (String) at(job, "script", 0);
    assertThat(sh(clone, Map.of("CI_MERGE_REQUEST_DIFF_BASE_SHA", "abc"), script).lines())
        .contains("validate", "-Dlinter.format=gitlab", "-Dlinter.since=abc");
    assertThat(sh(clone, Map.of("CI_MERGE_REQUEST_DIFF_BASE_SHA", ""), script))
        .doesNotContain("since", "changedOnly");
  }

  private static String block(String mark) throws IOException {
    Matcher matcher =
        Pattern.compile("<!-- " + mark + " -->\n```[a-z]+\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("docs", "ci.md")));
    assertThat(matcher.find()).as("the block %s", mark).isTrue();
    return matcher.group(1);
  }

  @Test
  void thePageShowsWhatTheFormsAre() throws Exception {
    String printed = sh(clone, Map.of(), block("example: forms"));
    List<String> expected = new ArrayList<>(block("output: forms").lines().toList());
    assertThat(printed.lines()).contains(expected.get(0));
    assertThat(printed.lines()).anyMatch(line -> line.startsWith(expected.get(1)));
  }

  /** The program itself reads the manifest and runs the hook. */
  @Test
  void preCommitRunsTheHook() throws Exception {
    String program = sh(work, Map.of(), "command -v pre-commit");
    if (System.getenv("CI") == null) {
      assumeThat(program)
          .as(
              "pre-commit is on the path (apt-get install pre-commit), or the manifest is not tried")
          .isNotEmpty();
    }
    assertThat(program).as("pre-commit is on the path, which CI needs").isNotEmpty();
    Path hooks = Files.createDirectory(work.resolve("hooks"));
    Files.copy(TOP.resolve(".pre-commit-hooks.yaml"), hooks.resolve(".pre-commit-hooks.yaml"));
    sh(hooks, Map.of(), "git init -q . && git add -A && git commit -qm Hooks");
    String revision = sh(hooks, Map.of(), "git rev-parse HEAD").strip();
    assertThat(sh(hooks, Map.of(), "pre-commit validate-manifest .pre-commit-hooks.yaml"))
        .isEmpty();
    Files.writeString(
        clone.resolve(".pre-commit-config.yaml"),
        block("example: pre-commit")
            .replace("REPOSITORY", hooks.toString())
            .replace("REVISION", revision));
    sh(clone, Map.of(), "git add -A");
    String run = "pre-commit run --all-files; echo code $?";
    assertThat(sh(clone, Map.of(), run))
        .contains("sites/example.yaml:25:14: error: ", "[address.duplicate]", "code 1");
    Files.writeString(clone.resolve("sites/example.yaml"), Example.SITE);
    sh(clone, Map.of(), "git add -A");
    assertThat(sh(clone, Map.of(), run)).contains("Passed", "code 0");
  }
}
