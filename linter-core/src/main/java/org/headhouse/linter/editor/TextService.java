package org.headhouse.linter.editor;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of open texts. Texts are taken as they come; all work on them is done by one thread
 * in the order in which it was asked for.
 */
final class TextService implements TextDocumentService {
  private final Workspace workspace;
  private final ExecutorService worker;
  private final Set<String> waiting = ConcurrentHashMap.newKeySet();
  private volatile ClientAbilities abilities = ClientAbilities.NONE;
  private volatile @Nullable Publisher publisher;

  TextService(Workspace workspace, ExecutorService worker) {
    this.workspace = workspace;
    this.worker = worker;
  }

  void begin(Publisher shown, ClientAbilities understood) {
    publisher = shown;
    abilities = understood;
  }

  @Override
  public void didOpen(DidOpenTextDocumentParams params) {
    var document = params.getTextDocument();
    take(OpenText.of(document.getUri(), document.getVersion(), document.getText()));
  }

  @Override
  public void didChange(DidChangeTextDocumentParams params) {
    var document = params.getTextDocument();
    var changes = params.getContentChanges();
    Integer version = document.getVersion();
    if (!changes.isEmpty()) {
      String whole = changes.get(changes.size() - 1).getText();
      take(OpenText.of(document.getUri(), version == null ? 0 : version, whole));
    }
  }

  @Override
  public void didSave(DidSaveTextDocumentParams params) {
    // The text is known already.
  }

  @Override
  public void didClose(DidCloseTextDocumentParams params) {
    String uri = params.getTextDocument().getUri();
    OpenText closed = workspace.get(uri);
    workspace.remove(uri);
    work(
        shown -> {
          if (workspace.get(uri) == null) { // else it was opened again meanwhile
            shown.clear(uri);
          }
        });
    if (closed != null && holdsForAll(closed)) {
      checkAll();
    }
  }

  private void take(OpenText text) {
    workspace.put(text);
    if (holdsForAll(text)) {
      checkAll();
    } else {
      check(text);
    }
  }

  private static boolean holdsForAll(OpenText text) {
    return text.role() == OpenText.Role.POLICY || text.role() == OpenText.Role.DEVICE_TYPES;
  }

  void checkAll() {
    workspace.all().forEach(this::check);
  }

  /** A text waits for one check at a time: however much happens meanwhile, its turn is soon. */
  private void check(OpenText text) {
    String uri = text.uri();
    if (publisher != null && waiting.add(uri)) {
      work(
          shown -> {
            waiting.remove(uri);
            OpenText newest = workspace.get(uri);
            if (newest != null) {
              shown.check(newest);
            }
          });
    }
  }

  private void work(Consumer<Publisher> job) {
    Publisher shown = publisher;
    if (shown != null) {
      worker.execute(() -> job.accept(shown));
    }
  }

  @Override
  public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
    return answer(
        params.getTextDocument(),
        List.of(),
        text -> {
          if (text.role() != OpenText.Role.SITE || !abilities.actions()) {
            return List.of();
          }
          QuickFixes fixes = new QuickFixes(workspace.check(text), workspace.base());
          return new Actions(text, abilities, params)
              .of(fixes).stream().map(Either::<Command, CodeAction>forRight).toList();
        });
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol wants null where there is nothing to show
  public CompletableFuture<@Nullable Hover> hover(HoverParams params) {
    return answer(
        params.getTextDocument(),
        null,
        text ->
            text.role() == OpenText.Role.OTHER
                ? null
                : new Hovers(workspace, text, abilities).of(params.getPosition()));
  }

  @Override
  public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>>
      definition(DefinitionParams params) {
    return answer(
        params.getTextDocument(),
        Either.forLeft(List.of()),
        text ->
            Either.forLeft(
                text.role() == OpenText.Role.OTHER
                    ? List.of()
                    : new Definitions(workspace, text).of(params.getPosition())));
  }

  @Override
  public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(
      CompletionParams params) {
    return answer(
        params.getTextDocument(),
        Either.forLeft(List.of()),
        text -> Either.forLeft(new Completions(workspace, text).at(params.getPosition())));
  }

  /** What is made of a text. */
  @FunctionalInterface
  private interface Work<T extends @Nullable Object> {
    T of(OpenText text) throws UserError;
  }

  /** A text that is not open, or whose surroundings cannot be used, has no answer. */
  private <T extends @Nullable Object> CompletableFuture<T> answer(
      TextDocumentIdentifier document, T none, Work<T> work) {
    Function<OpenText, T> made =
        text -> {
          try {
            return work.of(text);
          } catch (UserError shownAtTheText) {
            return none;
          }
        };
    return CompletableFuture.supplyAsync(
        () -> {
          OpenText text = workspace.get(document.getUri());
          return text == null ? none : made.apply(text);
        },
        worker);
  }
}
