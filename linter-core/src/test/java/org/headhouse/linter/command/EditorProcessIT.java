package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.Diagnostic;
import org.headhouse.linter.Example;
import org.headhouse.linter.command.CommandProcess.Ended;
import org.headhouse.linter.editor.TestEditor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The language server in the jar of the command, in a process of its own, by two clients. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class EditorProcessIT {
  private static final String INITIALIZE =
      message(
          "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}");
  private static final String END =
      message("{\"jsonrpc\":\"2.0\",\"id\":9,\"method\":\"shutdown\"}")
          + message("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");

  @TempDir private Path folder;
  private Path site = Path.of("");

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    site = Files.writeString(folder.resolve("sites/example.yaml"), Example.SITE);
  }

  private static String message(String json) {
    return "Content-Length: " + json.getBytes(UTF_8).length + "\r\n\r\n" + json;
  }

  @Test
  void theLibrarysClientOpensTypesAndEnds() throws Exception {
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(CommandProcess.command("lsp"))
            .directory(folder.toFile())
            .redirectError(err.toFile())
            .start();
    try (TestEditor editor = new TestEditor(process.getInputStream(), process.getOutputStream())) {
      editor.begin();
      assertThat(editor.open(site, Example.SITE)).isEmpty();
      List<Diagnostic> shown =
          editor.type(site, 2, Example.with("stage: planned", "stage: planed"));
      assertThat(shown)
          .extracting(one -> one.getCode().getLeft())
          .containsExactly("schema.bad-value");
      assertThat(
              TestEditor.applied(
                  Example.with("stage: planned", "stage: planed"),
                  editor
                      .actions(site, shown.get(0).getRange(), shown, "quickfix")
                      .get(0)
                      .getEdit()))
          .isEqualTo(Example.SITE);
      TestEditor.got(editor.server().shutdown());
      editor.server().exit();
      assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
      assertThat(process.exitValue()).isZero();
    } finally {
      process.destroyForcibly();
    }
    assertThat(err).isEmptyFile();
    assertThat(site).content().isEqualTo(Example.SITE);
  }

  /** What a broken editor sends is answered or left out, and the server goes on. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"line/unknown\",\"params\":{}}",
        "{\"jsonrpc\":\"2.0\",\"method\":\"line/unknown\"}",
        "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":",
        "no json at all",
        "[]",
        "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"textDocument/hover\",\"params\":{}}",
        "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"textDocument/hover\",\"params\":7}",
        "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didChange\",\"params\":{}}",
        "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\"}",
      })
  void whatMakesNoSenseDoesNotEndTheServer(String sent) throws Exception {
    Ended ended = talk(INITIALIZE + message(sent) + END);
    assertThat(ended.code()).isZero();
    assertThat(ended.out()).contains("\"id\":9").doesNotContain("\tat ");
    assertThat(ended.err()).isEmpty();
  }

  /** Where the next message begins is not known any more. */
  @ParameterizedTest
  @ValueSource(strings = {"Content-Length: 2000000000\r\n\r\n{}", "Content-Length: x\r\n\r\n", ""})
  void aStreamThatEndsOrMakesNoSenseEndsTheServer(String sent) throws Exception {
    Ended ended = talk(INITIALIZE + sent);
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.out()).doesNotContain("\tat ");
    assertThat(ended.err()).doesNotContain("\tat ");
  }

  private Ended talk(String sent) throws Exception {
    Path input = Files.writeString(folder.resolve("sent.txt"), sent);
    return CommandProcess.shell(
        folder, "\"$@\" < " + input, CommandProcess.command("lsp").toArray(String[]::new));
  }

  /** The editor of Debian: it opens, shows, types, fixes and saves. In CI it has to be there. */
  @Test
  void aRealEditorOpensTypesShowsAndFixes() throws Exception {
    boolean there = CommandProcess.shell(folder, "command -v nvim").code() == 0;
    if (!"true".equals(System.getenv("CI"))) {
      assumeThat(there).as("nvim is on the path; without it this test is skipped").isTrue();
    }
    assertThat(there).as("nvim is on the path, which CI needs").isTrue();
    Path script = folder.resolve("editor.lua");
    try (var in = EditorProcessIT.class.getResourceAsStream("editor.lua")) {
      Files.write(script, in.readAllBytes());
    }
    StringBuilder lua = new StringBuilder();
    CommandProcess.command("lsp").forEach(one -> lua.append('\'').append(one).append("',"));
    Ended ended =
        CommandProcess.run(
            folder,
            Map.of("LINTER_COMMAND", "{" + lua + "}", "XDG_STATE_HOME", folder + "/state"),
            List.of(
                "nvim", "--headless", "--clean", "-n", "-c", "luafile " + script, site.toString()));
    assertThat(ended.code()).as(ended.out() + ended.err()).isZero();
    assertThat(Files.readAllLines(folder.resolve("seen.txt")))
        .containsExactly(
            "opened: 0",
            "typed: schema.bad-value 3:8-3:14 severity 1",
            "fixed: stage: planned",
            "after the fix: 0");
    assertThat(site).content().isEqualTo(Example.SITE);
  }
}
