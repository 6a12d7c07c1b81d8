package org.headhouse.linter.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.Example;
import org.headhouse.linter.command.CommandProcess.Ended;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.PublishedSchemas;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Programs on libraries that nobody here wrote: a client of the protocol asks the language server
 * in the jar of the command, and a language server for YAML reads the published schemas. In CI they
 * have to be there; elsewhere, the tests are skipped without Node.js, or where npm cannot install
 * what package-lock.json lists.
 */
@EnabledOnOs({OS.LINUX, OS.MAC})
class OutsideReadersIT {
  private static final Path SOURCES = Path.of("src", "test", "node").toAbsolutePath();
  private static final Path INSTALLED = Path.of("target", "node").toAbsolutePath();
  private static final Path PAGE = Path.of("docs", "editor.md").toAbsolutePath();
  private static final List<String> PROGRAMS =
      List.of("package.json", "package-lock.json", "client.js", "server.js", "schemas.js");

  @TempDir private Path folder;

  @BeforeAll
  static void install() throws Exception {
    Files.createDirectories(INSTALLED);
    Path done = INSTALLED.resolve("installed.json");
    String wanted = Files.readString(SOURCES.resolve("package-lock.json"));
    for (String program : PROGRAMS) {
      Files.writeString(INSTALLED.resolve(program), Files.readString(SOURCES.resolve(program)));
    }
    if (Files.exists(done) && Files.readString(done).equals(wanted)) {
      return;
    }
    require("node and npm are on the path", "command -v node && command -v npm");
    require(
        "npm installs what package-lock.json lists",
        "npm ci --ignore-scripts --no-audit --no-fund --prefer-offline --fetch-retries=1");
    Files.writeString(done, wanted);
  }

  private static void require(String what, String script) throws Exception {
    Ended ended = CommandProcess.shell(INSTALLED, script);
    if (!"true".equals(System.getenv("CI"))) {
      assumeThat(ended.code()).as(what + "; without, this test is skipped").isZero();
    }
    assertThat(ended.code()).as(what + ", which CI needs: " + ended.out() + ended.err()).isZero();
  }

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/example.yaml"), Example.SITE);
  }

  private Ended run(String program, List<String> arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of("node", program, folder.toString()));
    command.addAll(arguments);
    return CommandProcess.run(INSTALLED, Map.of(), command);
  }

  /** Each step is checked in server.js. */
  @Test
  void aClientOfAnotherMakerGetsAllThatTheServerOffers() throws Exception {
    Files.writeString(
        folder.resolve("device-types.yaml"),
        "format: 1\ndevice-types:\n  - {id: eight-way}\n  - {id: four-way}\n");
    Ended ended = run("server.js", CommandProcess.command("lsp"));
    assertThat(ended.err()).isEmpty();
    assertThat(ended.out().lines())
        .containsExactly(
            "begin",
            "diagnostics",
            "fixes",
            "hovers",
            "completions",
            "definitions",
            "filesOnDisk",
            "end");
    assertThat(ended.code()).isZero();
  }

  /** Each step is checked in schemas.js; the settings are those that the page shows. */
  @Test
  void aReaderOfAnotherMakerCompletesFromTheSchemas() throws Exception {
    Path schemas = Files.createDirectory(folder.resolve("schema"));
    for (FileKind kind : FileKind.values()) {
      Files.writeString(schemas.resolve(kind.schemaFile()), PublishedSchemas.text(kind));
    }
    Ended ended = run("schemas.js", List.of(PAGE.toString()));
    assertThat(ended.err()).isEmpty();
    assertThat(ended.out().lines())
        .containsExactly("begin", "valid", "invalid", "rules", "policy", "items", "end");
    assertThat(ended.code()).isZero();
  }
}
