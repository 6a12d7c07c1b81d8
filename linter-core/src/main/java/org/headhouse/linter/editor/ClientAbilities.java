package org.headhouse.linter.editor;

import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.PublishDiagnosticsCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.jspecify.annotations.Nullable;

/**
 * What the editor understands beyond what every one does.
 *
 * @param related other places of a diagnostic
 * @param markdown text with headings and lists
 * @param versioned edits that say which version of a text they are for
 * @param confirmed edits that are shown before they are made
 * @param actions actions that say what they are for
 * @param watches whether it can be asked to watch files
 */
record ClientAbilities(
    boolean related,
    boolean markdown,
    boolean versioned,
    boolean confirmed,
    boolean actions,
    boolean watches) {

  /** Those of an editor that says nothing. */
  static final ClientAbilities NONE = new ClientAbilities(false, false, false, false, false, false);

  static ClientAbilities of(@Nullable ClientCapabilities all) {
    Optional<TextDocumentClientCapabilities> text =
        Optional.ofNullable(all).map(ClientCapabilities::getTextDocument);
    Optional<WorkspaceClientCapabilities> workspace =
        Optional.ofNullable(all).map(ClientCapabilities::getWorkspace);
    Optional<WorkspaceEditCapabilities> edits =
        workspace.map(WorkspaceClientCapabilities::getWorkspaceEdit);
    return new ClientAbilities(
        text.map(TextDocumentClientCapabilities::getPublishDiagnostics)
            .map(PublishDiagnosticsCapabilities::getRelatedInformation)
            .orElse(false),
        text.map(TextDocumentClientCapabilities::getHover)
            .map(HoverCapabilities::getContentFormat)
            .orElse(List.of())
            .contains(MarkupKind.MARKDOWN),
        edits.map(WorkspaceEditCapabilities::getDocumentChanges).orElse(false),
        edits.map(WorkspaceEditCapabilities::getChangeAnnotationSupport).isPresent(),
        text.map(TextDocumentClientCapabilities::getCodeAction)
            .map(CodeActionCapabilities::getCodeActionLiteralSupport)
            .isPresent(),
        workspace
            .map(WorkspaceClientCapabilities::getDidChangeWatchedFiles)
            .map(DidChangeWatchedFilesCapabilities::getDynamicRegistration)
            .orElse(false));
  }
}
