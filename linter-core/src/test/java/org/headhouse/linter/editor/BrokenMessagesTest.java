package org.headhouse.linter.editor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.run.SettingsRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an editor sends after a message that makes no sense is answered all the same. */
class BrokenMessagesTest {
  private static final String BEGIN =
      "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}";
  private static final String SHUT_DOWN = "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}";
  private static final String EXIT = "{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}";

  @TempDir private Path folder;

  /** As the protocol frames it ("Base Protocol", header part). */
  private static void send(OutputStream out, String content) throws IOException {
    byte[] bytes = content.getBytes(UTF_8);
    out.write(("Content-Length: " + bytes.length + "\r\n\r\n").getBytes(UTF_8));
    out.write(bytes);
    out.flush();
  }

  /** The answers to what an editor sends before and after such a message. */
  private String answers(String broken) throws Exception {
    PipedInputStream toServer = new PipedInputStream(1 << 20);
    PipedInputStream toEditor = new PipedInputStream(1 << 20);
    try (PipedOutputStream fromServer = new PipedOutputStream(toEditor);
        OutputStream out = new PipedOutputStream(toServer)) {
      SettingsRequest asked =
          new SettingsRequest(folder, null, null, new BaseFolder(folder), "--"::concat);
      CompletableFuture<Integer> code =
          CompletableFuture.supplyAsync(
              () -> EditorServer.serve(toServer, fromServer, asked, "test"));
      for (String message : new String[] {BEGIN, broken, SHUT_DOWN, EXIT}) {
        send(out, message);
      }
      // The stream stays open: a server that waits for more would answer once it ends.
      assertThat(code.get(60, TimeUnit.SECONDS)).isZero();
    }
    try (BufferedReader answers = new BufferedReader(new InputStreamReader(toEditor, UTF_8))) {
      return String.join("\n", answers.lines().toList());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"jsonrpc\":\"2.0\",\"method\":\"$/other\",\"params\":",
        "{\"jsonrpc\":\"2.0\",\"id\":3,\"method\":\"textDocument/hover\",\"params\":",
        "{\"jsonrpc\":\"2.0\",\"id\":3,\"result\":",
        "",
      })
  void bracketsWithoutEndAreNotTakenForTheNextMessage(String start) throws Exception {
    assertThat(answers(start + "[".repeat(100_000) + "]".repeat(100_000) + "}"))
        .contains("\"id\":2,\"result\":null");
  }

  @Test
  void aMessageThatIsCutOffOrIsNoMessageIsPassedOver() throws Exception {
    String text = "\u00E9".repeat(50_000);
    for (String broken : new String[] {text, "{\"a\":x" + text, "[{},\"" + text}) {
      assertThat(answers(broken)).contains("\"id\":2,\"result\":null");
    }
  }
}
