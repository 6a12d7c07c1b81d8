package org.headhouse.linter.editor;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesRegistrationOptions;
import org.eclipse.lsp4j.FileSystemWatcher;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import org.jspecify.annotations.Nullable;

/** The server: what it can do, its begin and its end. */
final class LineServer implements LanguageServer, LanguageClientAware {
  private static final List<String> WATCHED = List.of("**/device-types.yaml", "**/linter.yaml");

  private final Workspace workspace;
  private final TextService texts;
  private final ExecutorService worker;
  private final @Nullable String version;
  private final CompletableFuture<Integer> ended = new CompletableFuture<>();
  private @Nullable LanguageClient client;
  private volatile boolean watches;
  private volatile boolean shutDown;

  /**
   * @param worker does all work, in one thread
   * @param version of the tool, or null where it is not known
   */
  LineServer(Surroundings surroundings, ExecutorService worker, @Nullable String version) {
    this.workspace = new Workspace(surroundings);
    this.texts = new TextService(workspace, worker);
    this.worker = worker;
    this.version = version;
  }

  @Override
  public void connect(LanguageClient editor) {
    client = editor;
  }

  /** The exit code, once the editor asks for the end: 0 where it asked to shut down before. */
  CompletableFuture<Integer> ended() {
    return ended;
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    ClientAbilities abilities = ClientAbilities.of(params.getCapabilities());
    watches = abilities.watches();
    if (client != null) {
      texts.begin(new Publisher(workspace, client, abilities), abilities);
    }
    ServerCapabilities offered = new ServerCapabilities();
    offered.setTextDocumentSync(TextDocumentSyncKind.Full);
    offered.setHoverProvider(true);
    offered.setDefinitionProvider(true);
    offered.setCompletionProvider(new CompletionOptions(false, List.of(" ", "[", ",")));
    offered.setCodeActionProvider(new CodeActionOptions(Actions.KINDS));
    InitializeResult result = new InitializeResult(offered);
    result.setServerInfo(new ServerInfo("Headhouse Linter", version));
    return CompletableFuture.completedFuture(result);
  }

  @Override
  public void initialized(InitializedParams params) {
    if (client != null && watches) {
      List<FileSystemWatcher> watchers =
          WATCHED.stream().map(one -> new FileSystemWatcher(Either.forLeft(one))).toList();
      // One that cannot be watched is looked at before each check all the same.
      CompletableFuture<Void> unused =
          client.registerCapability(
              new RegistrationParams(
                  List.of(
                      new Registration(
                          "files-that-hold-for-sites",
                          "workspace/didChangeWatchedFiles",
                          new DidChangeWatchedFilesRegistrationOptions(watchers)))));
    }
  }

  @Override
  public CompletableFuture<Object> shutdown() {
    shutDown = true;
    return CompletableFuture.supplyAsync(Object::new, worker).thenApply(done -> nothing());
  }

  /** The answer to a request that asks for none. */
  @SuppressWarnings("NullAway") // the protocol wants null
  private static Object nothing() {
    return null;
  }

  @Override
  public void exit() {
    worker.execute(() -> ended.complete(shutDown ? 0 : 1)); // once all answers are written
  }

  @Override
  public void setTrace(SetTraceParams params) {
    // Nothing is traced.
  }

  @Override
  public TextDocumentService getTextDocumentService() {
    return texts;
  }

  @Override
  public WorkspaceService getWorkspaceService() {
    return new WorkspaceService() {
      @Override
      public void didChangeConfiguration(DidChangeConfigurationParams params) {
        // There is nothing to configure.
      }

      @Override
      public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
        texts.checkAll();
      }
    };
  }
}
