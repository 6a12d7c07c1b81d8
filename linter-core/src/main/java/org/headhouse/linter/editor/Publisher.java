package org.headhouse.linter.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.services.LanguageClient;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.InvisibleCharacters;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/** Shows in the editor what checks find. For one thread. */
final class Publisher {
  /** What an editor shows results as coming from. */
  private static final String SOURCE = "linter";

  private static final Range START = new Range(new Position(0, 0), new Position(0, 0));

  private final Workspace workspace;
  private final LanguageClient client;
  private final ClientAbilities abilities;
  private final Set<String> filled = new HashSet<>();

  Publisher(Workspace workspace, LanguageClient client, ClientAbilities abilities) {
    this.workspace = workspace;
    this.client = client;
    this.abilities = abilities;
  }

  /** Checks a text and shows the results, also those of what holds for it. */
  // A failure of the tool must not pass for a clean text, nor end the server.
  @SuppressWarnings("IllegalCatch")
  void check(OpenText text) {
    if (text.role() == OpenText.Role.OTHER) {
      publish(text.uri(), text.version(), List.of());
      return;
    }
    try {
      show(workspace.check(text));
    } catch (UserError error) {
      String why = String.valueOf(error.getMessage());
      publish(text.uri(), text.version(), List.of(failure("this text cannot be checked: " + why)));
    } catch (RuntimeException | StackOverflowError | LinkageError broken) {
      publish(
          text.uri(),
          text.version(),
          List.of(failure("the tool failed on this text, please report it: " + broken)));
    }
  }

  private void show(Workspace.Checked checked) {
    OpenText text = checked.text();
    List<Diagnostic> own = new ArrayList<>();
    for (Notification one : checked.report().notifications()) {
      own.add(failure(one.text()));
    }
    Positions positions = text.positions();
    for (Result result : checked.own(workspace.base())) {
      own.add(diagnostic(result, positions));
    }
    publish(text.uri(), text.version(), own);
    for (Path settings : checked.found().files().all()) {
      OpenText open = workspace.at(settings);
      if (open == null) {
        String shown = workspace.base().shown(settings);
        publish(
            workspace.uri(settings),
            null,
            checked.results().stream()
                .filter(one -> one.location().file().equals(shown))
                .map(one -> diagnostic(one, null))
                .toList());
      }
    }
  }

  /** Shows nothing for a text that is closed. */
  void clear(String uri) {
    publish(uri, null, List.of());
  }

  private void publish(String uri, @Nullable Integer version, List<Diagnostic> all) {
    boolean wasFilled = all.isEmpty() ? filled.remove(uri) : !filled.add(uri);
    if (all.isEmpty() && !wasFilled && version == null) {
      return; // nothing was shown of this file, and nothing is to be
    }
    PublishDiagnosticsParams shown = new PublishDiagnosticsParams(uri, all);
    if (version != null) {
      shown.setVersion(version);
    }
    client.publishDiagnostics(shown);
  }

  private static Diagnostic failure(String text) {
    return new Diagnostic(START, printable(text), DiagnosticSeverity.Error, SOURCE);
  }

  private Diagnostic diagnostic(Result result, @Nullable Positions positions) {
    StringBuilder text = new StringBuilder(message(result.message()));
    Diagnostic diagnostic = new Diagnostic();
    diagnostic.setRange(range(result.location(), positions));
    diagnostic.setSeverity(severity(result.level()));
    diagnostic.setCode(result.rule());
    diagnostic.setSource(SOURCE);
    List<DiagnosticRelatedInformation> related = new ArrayList<>();
    for (RelatedLocation one : result.related()) {
      boolean here = one.location().file().equals(result.location().file());
      related.add(
          new DiagnosticRelatedInformation(
              new Location(
                  workspace.uri(one.location().file()),
                  range(one.location(), here ? positions : null)),
              printable(one.text())));
      if (!abilities.related()) {
        text.append("\nLine ").append(one.location().region().startLine());
        text.append(here ? "" : " of " + printable(one.location().file()));
        text.append(": ").append(printable(one.text()));
      }
    }
    if (abilities.related() && !related.isEmpty()) {
      diagnostic.setRelatedInformation(related);
    }
    diagnostic.setMessage(text.toString());
    return diagnostic;
  }

  /** Fact, reason and remedy, each on a line of its own. */
  static String message(Message message) {
    return printable(message.fact())
        + "\n"
        + printable(message.reason())
        + "\n"
        + printable(message.remedy());
  }

  static String printable(String text) {
    return InvisibleCharacters.shown(text);
  }

  /** Of a text that is not open only the line is known that has the place. */
  private Range range(org.headhouse.linter.result.Location location, @Nullable Positions known) {
    if (known != null) {
      return known.range(location.region());
    }
    var region = location.region();
    OpenText open = workspace.at(workspace.base().path().resolve(location.file()));
    if (open != null) {
      return open.positions().range(region);
    }
    SourceText line = new SourceText(location.file(), location.line());
    int start = line.offset(1, region.startColumn());
    int end = region.endLine() == region.startLine() ? line.offset(1, region.endColumn()) : start;
    return new Range(
        new Position(region.startLine() - 1, start),
        new Position(region.startLine() - 1, Math.max(start, end)));
  }

  private static DiagnosticSeverity severity(Level level) {
    return switch (level) {
      case ERROR -> DiagnosticSeverity.Error;
      case WARNING -> DiagnosticSeverity.Warning;
      default -> DiagnosticSeverity.Information;
    };
  }
}
