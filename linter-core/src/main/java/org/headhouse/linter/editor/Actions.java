package org.headhouse.linter.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.AnnotatedTextEdit;
import org.eclipse.lsp4j.ChangeAnnotation;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/** What an editor offers to do about results. Nothing is written: the editor gets the edits. */
final class Actions {
  static final List<String> KINDS = List.of(CodeActionKind.QuickFix, CodeActionKind.SourceFixAll);

  /** As the goal fix says it. */
  private static final String CAUTION =
      "It changes the file only: the work at the units goes with it. Isolate the supply before you"
          + " open a unit, and follow the local electrical code.";

  private static final String WORK_ON_SITE = "work-on-site";

  private final OpenText text;
  private final Positions positions;
  private final ClientAbilities abilities;
  private final CodeActionParams asked;

  Actions(OpenText text, ClientAbilities abilities, CodeActionParams asked) {
    this.text = text;
    this.positions = text.positions();
    this.abilities = abilities;
    this.asked = asked;
  }

  /** The actions of a text that was checked. */
  List<CodeAction> of(QuickFixes fixes) {
    List<CodeAction> actions = new ArrayList<>();
    if (wants(CodeActionKind.QuickFix)) {
      Region start = positions.region(asked.getRange().getStart());
      Region end = positions.region(asked.getRange().getEnd());
      Region touched =
          end.compareTo(start) < 0
              ? start
              : new Region(
                  start.startLine(), start.startColumn(), end.startLine(), end.startColumn());
      fixes.touching(touched).forEach(one -> actions.add(quickFix(one)));
    }
    if (wants(CodeActionKind.SourceFixAll) && fixes.anySafe()) {
      String after = fixes.afterAllSafe();
      if (!after.equals(text.text())) {
        CodeAction all = new CodeAction("Fix all that is safe to fix");
        all.setKind(CodeActionKind.SourceFixAll);
        all.setEdit(edit(after, true));
        actions.add(all);
      }
    }
    return actions;
  }

  private boolean wants(String kind) {
    List<String> only = asked.getContext() == null ? null : asked.getContext().getOnly();
    return only == null
        || only.isEmpty()
        || only.stream().anyMatch(one -> one.isEmpty() || (kind + ".").startsWith(one + "."));
  }

  private CodeAction quickFix(QuickFixes.Tried tried) {
    String what = Publisher.printable(tried.fix().description());
    String sentence = Character.toUpperCase(what.charAt(0)) + what.substring(1);
    CodeAction action =
        new CodeAction(tried.isSafe() ? sentence : "Proposed, with work on site: " + sentence);
    action.setKind(CodeActionKind.QuickFix);
    if (tried.isSafe()) {
      action.setIsPreferred(true);
    }
    action.setDiagnostics(diagnostics(tried.results()));
    action.setEdit(edit(tried.after(), tried.isSafe()));
    return action;
  }

  /** Those that the editor shows for the results. */
  private List<Diagnostic> diagnostics(List<Result> results) {
    List<Diagnostic> shown =
        asked.getContext() == null || asked.getContext().getDiagnostics() == null
            ? List.of()
            : asked.getContext().getDiagnostics();
    return shown.stream()
        .filter(one -> results.stream().anyMatch(result -> isOf(one, result)))
        .toList();
  }

  private boolean isOf(Diagnostic shown, Result result) {
    Either<String, Integer> code = shown.getCode();
    return code != null
        && code.isLeft()
        && code.getLeft().equals(result.rule())
        && positions.range(result.location().region()).equals(shown.getRange());
  }

  private WorkspaceEdit edit(String after, boolean safe) {
    TextEdit change = change(after);
    if (!abilities.versioned()) {
      return new WorkspaceEdit(Map.of(text.uri(), List.of(change)));
    }
    boolean confirmed = !safe && abilities.confirmed();
    TextEdit shown =
        confirmed
            ? new AnnotatedTextEdit(change.getRange(), change.getNewText(), WORK_ON_SITE)
            : change;
    TextDocumentEdit document =
        new TextDocumentEdit(
            new VersionedTextDocumentIdentifier(text.uri(), text.version()),
            List.of(Either.forLeft(shown)));
    WorkspaceEdit edit = new WorkspaceEdit(List.of(Either.forLeft(document)));
    if (confirmed) {
      ChangeAnnotation work = new ChangeAnnotation("Work on site goes with it");
      work.setNeedsConfirmation(true);
      work.setDescription(CAUTION);
      edit.setChangeAnnotations(Map.of(WORK_ON_SITE, work));
    }
    return edit;
  }

  /** The one stretch that differs, so that the cursor and folded lines stay. */
  private TextEdit change(String whole) {
    String before = positions.source().text();
    String after = whole.substring(positions.marks());
    int most = Math.min(before.length(), after.length());
    int start = 0;
    while (start < most && before.charAt(start) == after.charAt(start)) {
      start++;
    }
    start = boundary(before, start);
    int end = 0;
    while (end < most - start
        && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
      end++;
    }
    if (end > 0 && Character.isLowSurrogate(before.charAt(before.length() - end))) {
      end--;
    }
    if (end > 0 && before.charAt(before.length() - end) == '\n') {
      end--; // of a CR LF, or the whole line end: no edit begins between the two
    }
    return new TextEdit(
        positions.between(start, before.length() - end),
        after.substring(start, after.length() - end));
  }

  /** Not inside a pair of surrogates or of line end. */
  private static int boundary(String text, int index) {
    boolean inside =
        index > 0
            && (Character.isHighSurrogate(text.charAt(index - 1))
                || text.charAt(index - 1) == '\r');
    return inside ? index - 1 : index;
  }

  /** A reader of the parameters that may lack all. */
  static @Nullable String uri(CodeActionParams params) {
    return params.getTextDocument() == null ? null : params.getTextDocument().getUri();
  }
}
