package org.headhouse.linter.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKindCapabilities;
import org.eclipse.lsp4j.CodeActionLiteralSupportCapabilities;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsCapabilities;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/** An editor for tests: the protocol library's own client over a pair of streams. */
public final class TestEditor implements LanguageClient, AutoCloseable {
  private static final long SECONDS = 60;

  private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();
  private final List<RegistrationParams> registered = new ArrayList<>();
  private final ExecutorService listener = Executors.newCachedThreadPool();
  private final LanguageServer server;

  /** Talks to a server: reads what it writes, and writes what it reads. */
  public TestEditor(InputStream in, OutputStream out) {
    Launcher<LanguageServer> launcher =
        LSPLauncher.createClientLauncher(this, in, out, listener, messages -> messages);
    server = launcher.getRemoteProxy();
    java.util.concurrent.Future<Void> unused = launcher.startListening();
  }

  /** An answer, or a failure where none comes. */
  public static <T> T got(CompletableFuture<T> answer) throws Exception {
    return answer.get(SECONDS, TimeUnit.SECONDS);
  }

  /** Begins with an editor that understands all there is. */
  public InitializeResult begin() throws Exception {
    TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
    text.setPublishDiagnostics(new PublishDiagnosticsCapabilities(true));
    text.setHover(new HoverCapabilities(List.of("markdown"), false));
    text.setCodeAction(
        new CodeActionCapabilities(
            new CodeActionLiteralSupportCapabilities(new CodeActionKindCapabilities()), false));
    WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
    WorkspaceEditCapabilities edits = new WorkspaceEditCapabilities();
    edits.setDocumentChanges(true);
    workspace.setWorkspaceEdit(edits);
    workspace.setDidChangeWatchedFiles(new DidChangeWatchedFilesCapabilities(true));
    InitializeParams params = new InitializeParams();
    params.setCapabilities(new ClientCapabilities(workspace, text, null));
    InitializeResult result = got(server.initialize(params));
    server.initialized(new InitializedParams());
    return result;
  }

  public LanguageServer server() {
    return server;
  }

  public static TextDocumentIdentifier document(Path file) {
    return new TextDocumentIdentifier(file.toUri().toString());
  }

  /** Opens a text in place of a file, and gives what is found in it. */
  public List<Diagnostic> open(Path file, String text) throws Exception {
    return open(file.toUri().toString(), text);
  }

  public List<Diagnostic> open(String uri, String text) throws Exception {
    send(uri, text);
    return shown(uri, 1);
  }

  /** Opens a text without waiting for what is found. */
  public void send(String uri, String text) {
    server
        .getTextDocumentService()
        .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "yaml", 1, text)));
  }

  /** Types, and gives what is found. */
  public List<Diagnostic> type(Path file, int version, String text) throws Exception {
    String uri = file.toUri().toString();
    server
        .getTextDocumentService()
        .didChange(
            new DidChangeTextDocumentParams(
                new VersionedTextDocumentIdentifier(uri, version),
                List.of(new TextDocumentContentChangeEvent(text))));
    return shown(uri, version);
  }

  /** What is shown of a version of a text. */
  public List<Diagnostic> shown(String uri, int version) throws Exception {
    return next(one ->
            one.getUri().equals(uri) && one.getVersion() != null && one.getVersion() == version)
        .getDiagnostics();
  }

  /** How often something was shown that nobody has looked at. */
  public int waiting() {
    return published.size();
  }

  /** What was shown last of a text, of what has come already. */
  public PublishDiagnosticsParams last(String uri) throws Exception {
    PublishDiagnosticsParams last = next(one -> one.getUri().equals(uri));
    List<PublishDiagnosticsParams> more = new ArrayList<>();
    published.drainTo(more);
    for (PublishDiagnosticsParams one : more) {
      last = one.getUri().equals(uri) ? one : last;
    }
    return last;
  }

  public PublishDiagnosticsParams next(Predicate<PublishDiagnosticsParams> wanted)
      throws Exception {
    while (true) {
      PublishDiagnosticsParams one = published.poll(SECONDS, TimeUnit.SECONDS);
      assertThat(one).as("the server shows something").isNotNull();
      if (wanted.test(one)) {
        return one;
      }
    }
  }

  public List<CodeAction> actions(Path file, Range range, List<Diagnostic> shown, String... only)
      throws Exception {
    CodeActionContext context = new CodeActionContext(shown);
    if (only.length > 0) {
      context.setOnly(List.of(only));
    }
    return got(
            server
                .getTextDocumentService()
                .codeAction(new CodeActionParams(document(file), range, context)))
        .stream()
        .map(one -> one.getRight())
        .toList();
  }

  /** A text after an edit of an action, applied as the protocol says. */
  public static String applied(String text, WorkspaceEdit edit) {
    List<TextEdit> edits =
        edit.getDocumentChanges() == null
            ? edit.getChanges().values().iterator().next()
            : edit.getDocumentChanges().get(0).getLeft().getEdits().stream()
                .map(one -> one.getLeft())
                .toList();
    assertThat(edits).hasSize(1);
    TextEdit one = edits.get(0);
    return text.substring(0, index(text, one.getRange().getStart()))
        + one.getNewText()
        + text.substring(index(text, one.getRange().getEnd()));
  }

  /** The index of a position in a text whose lines end with LF. */
  public static int index(String text, Position position) {
    int start = 0;
    for (int line = 0; line < position.getLine(); line++) {
      start = text.indexOf('\n', start) + 1;
    }
    return start + position.getCharacter();
  }

  /** The position of a piece of a text, and some characters on. */
  public static Position position(String text, String piece, int on) {
    int index = text.indexOf(piece) + on;
    assertThat(text).contains(piece);
    int line = (int) text.substring(0, index).chars().filter(c -> c == '\n').count();
    return new Position(line, index - (text.lastIndexOf('\n', index - 1) + 1));
  }

  public List<RegistrationParams> registered() {
    return registered;
  }

  @Override
  public void close() {
    listener.shutdownNow();
  }

  @Override
  public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
    published.add(diagnostics);
  }

  @Override
  public CompletableFuture<Void> registerCapability(RegistrationParams params) {
    registered.add(params);
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void telemetryEvent(Object object) {
    throw new AssertionError("nobody asked for " + object);
  }

  @Override
  public void showMessage(MessageParams message) {
    throw new AssertionError(message.getMessage());
  }

  @Override
  public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams params) {
    throw new AssertionError(params.getMessage());
  }

  @Override
  public void logMessage(MessageParams message) {
    throw new AssertionError(message.getMessage());
  }

  static Map<String, String> byCode(List<Diagnostic> all) {
    Map<String, String> messages = new java.util.TreeMap<>();
    all.forEach(one -> messages.put(one.getCode().getLeft(), one.getMessage().getLeft()));
    return messages;
  }
}
