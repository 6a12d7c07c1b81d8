package org.headhouse.linter.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.headhouse.linter.editor.TestEditor.applied;
import static org.headhouse.linter.editor.TestEditor.byCode;
import static org.headhouse.linter.editor.TestEditor.document;
import static org.headhouse.linter.editor.TestEditor.got;
import static org.headhouse.linter.editor.TestEditor.position;

import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.run.SettingsRequest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The server by the protocol library's own client, in one process. */
class EditorServerTest {
  private static final String TYPES =
      "format: 1\ndevice-types:\n  - {id: eight-way, unit-load: 1/8}\n  - {id: four-way}\n";

  @TempDir private Path folder;
  private Path site = Path.of("");
  private CompletableFuture<Integer> code = new CompletableFuture<>();
  private TestEditor editor;

  @BeforeEach
  void connect() throws Exception {
    Files.createDirectory(folder.resolve("sites"));
    site = Files.writeString(folder.resolve("sites/example.yaml"), Example.SITE);
    Files.writeString(folder.resolve("device-types.yaml"), TYPES);
    PipedInputStream toServer = new PipedInputStream(1 << 22);
    PipedInputStream toClient = new PipedInputStream(1 << 22);
    PipedOutputStream fromClient = new PipedOutputStream(toServer);
    PipedOutputStream fromServer = new PipedOutputStream(toClient);
    SettingsRequest asked =
        new SettingsRequest(
            folder.resolve("sites"), null, null, new BaseFolder(folder), "--"::concat);
    code =
        CompletableFuture.supplyAsync(
            () -> EditorServer.serve(toServer, fromServer, asked, "test"));
    editor = new TestEditor(toClient, fromClient);
    editor.begin();
  }

  @AfterEach
  void end() throws Exception {
    got(editor.server().shutdown());
    editor.server().exit();
    assertThat(got(code)).isZero();
    editor.close();
    assertThat(site).content().isEqualTo(Example.SITE);
  }

  @Test
  void aCleanTextHasNothingAndTypingShowsWhatTheCheckFinds() throws Exception {
    assertThat(editor.open(site, Example.SITE)).isEmpty();
    String text = Example.with("address: 3", "address: 4");
    List<Diagnostic> shown = editor.type(site, 2, text);
    assertThat(shown).hasSize(1);
    Diagnostic gap = shown.get(0);
    assertThat(gap.getCode().getLeft()).isEqualTo("address.gap");
    assertThat(gap.getSeverity()).isEqualTo(DiagnosticSeverity.Error);
    assertThat(gap.getRange()).isEqualTo(new Range(new Position(24, 13), new Position(24, 14)));
    assertThat(gap.getMessage().getLeft().split("\n")).hasSize(3);
    assertThat(editor.type(site, 3, Example.SITE)).isEmpty();
  }

  /** The protocol counts UTF-16 units, of which a letter of a rare script has two. */
  @Test
  void columnsAreCountedInUtf16() throws Exception {
    String text =
        Example.with(
            "{light: head, temperature: head}\n    cable",
            "{\"\\u006cight\": head, temperature: local} # \uD83C\uDF31\n    cable");
    String wide =
        Example.SITE
            .replace(
                "- unit: Seedling North\n    role: follower\n    address: 2",
                "- {unit: \uD83C\uDF31 North, role: follower, address: 1,\n    comm-module: fitted, conductors: [A, B], termination: none, outdoor: head, cable-to-next: 60 m}")
            .replaceFirst(
                "(?s)    comm-module: fitted\n    conductors: \\[A, B]\n    termination: none\n.*?60 m\n",
                "");
    assertThat(text).isNotEqualTo(wide);
    List<Diagnostic> shown = editor.open(site, wide);
    Diagnostic twice =
        shown.stream()
            .filter(one -> one.getCode().getLeft().equals("address.duplicate"))
            .findFirst()
            .orElseThrow();
    String line = wide.lines().toList().get(twice.getRange().getStart().getLine());
    assertThat(
            line.substring(
                twice.getRange().getStart().getCharacter(),
                twice.getRange().getEnd().getCharacter()))
        .isEqualTo("1");
    assertThat(twice.getRelatedInformation()).isNotEmpty();
    assertThat(twice.getRelatedInformation().get(0).getLocation().getUri())
        .isEqualTo(site.toUri().toString());
  }

  @Test
  void aQuickFixGivesWhatTheGoalFixWrites() throws Exception {
    String text = Example.with("stage: planned", "stage: planed");
    List<Diagnostic> shown = editor.open(site, text);
    List<CodeAction> actions = editor.actions(site, shown.get(0).getRange(), shown, "quickfix");
    assertThat(actions).hasSize(1);
    assertThat(actions.get(0).getDiagnostics()).hasSize(1);
    assertThat(applied(text, actions.get(0).getEdit()))
        .isEqualTo(fixed(text, FixKind.PROPOSED))
        .isEqualTo(Example.SITE);
    assertThat(
            actions
                .get(0)
                .getEdit()
                .getDocumentChanges()
                .get(0)
                .getLeft()
                .getTextDocument()
                .getVersion())
        .isEqualTo(1);
  }

  @Test
  void allSafeFixesGiveWhatTheGoalFixWrites() throws Exception {
    String text =
        Example.SITE
            .replace("role: follower", "role: folower")
            .replace(
                "comm-module: fitted\n    conductors: [A, B, G]",
                "comm-module: fited\n    conductors: [A, B, G]");
    List<Diagnostic> shown = editor.open(site, text);
    assertThat(shown).isNotEmpty();
    List<CodeAction> all =
        editor.actions(site, new Range(new Position(0, 0), new Position(0, 0)), shown, "source");
    String wanted = fixed(text, FixKind.SAFE);
    if (wanted.equals(text)) {
      assertThat(all).isEmpty();
    } else {
      assertThat(all).extracting(CodeAction::getKind).containsExactly("source.fixAll");
      assertThat(applied(text, all.get(0).getEdit())).isEqualTo(wanted);
    }
    assertThat(wanted).as("the case has safe fixes").isNotEqualTo(text);
  }

  @Test
  void aProposedFixSaysSoAndIsNotPreferred() throws Exception {
    String text = Example.SITE + "as-found:\n  - {first-silent: Hardenin Bay}\n";
    List<Diagnostic> shown = editor.open(site, text);
    List<CodeAction> actions = editor.actions(site, shown.get(0).getRange(), shown, "quickfix");
    assertThat(actions).isNotEmpty();
    for (CodeAction action : actions) {
      assertThat(action.getTitle()).startsWith("Proposed, with work on site: ");
      assertThat(action.getIsPreferred()).isNotEqualTo(true);
    }
    assertThat(editor.actions(site, shown.get(0).getRange(), shown, "refactor")).isEmpty();
  }

  /** An editor looks at no earlier states: the record of a live line may have gone with one. */
  @Test
  void noLineIsRenumberedWithoutAsking() throws Exception {
    String text = Example.SITE.replaceFirst("address: 3", "address: 4");
    assertThat(fixed(text, FixKind.SAFE)).isEqualTo(Example.SITE);
    List<Diagnostic> shown = editor.open(site, text);
    assertThat(shown)
        .singleElement()
        .satisfies(one -> assertThat(one.getCode().getLeft()).isEqualTo("address.gap"));
    assertThat(editor.actions(site, shown.get(0).getRange(), shown, "source")).isEmpty();
    assertThat(editor.actions(site, shown.get(0).getRange(), shown, "quickfix"))
        .singleElement()
        .satisfies(one -> assertThat(one.getTitle()).startsWith("Proposed, with work on site: "));
  }

  private String fixed(String text, FixKind kind) throws IOException {
    StringBuilder after = new StringBuilder();
    SiteLinter.builder()
        .deviceTypes(folder.resolve("device-types.yaml"))
        .build()
        .fix(
            java.util.stream.Stream.of(SiteInput.text("sites/example.yaml", text)),
            kind,
            one -> after.append(new String(one.after(), java.nio.charset.StandardCharsets.UTF_8)));
    return after.toString();
  }

  @Test
  void deviceTypesThatChangeCountAtOnce() throws Exception {
    String text = Example.with("address: 2\n", "address: 2\n    device-type: three-way\n");
    assertThat(byCode(editor.open(site, text))).containsKey("reference.unknown");
    Path types = folder.resolve("device-types.yaml");
    Files.writeString(types, TYPES + "  - {id: three-way}\n");
    assertThat(editor.registered().toString()).contains("device-types.yaml", "linter.yaml");
    editor
        .server()
        .getWorkspaceService()
        .didChangeWatchedFiles(new DidChangeWatchedFilesParams(List.of()));
    assertThat(editor.shown(site.toUri().toString(), 1)).isEmpty();
    // Open and not saved, they count as they are in the editor.
    editor.send(types.toUri().toString(), TYPES);
    assertThat(byCode(editor.shown(site.toUri().toString(), 1))).containsKey("reference.unknown");
  }

  @Test
  void whatIsWrongWithDeviceTypesIsShownThere() throws Exception {
    Path types = folder.resolve("device-types.yaml");
    Files.writeString(types, TYPES + "  - {id: three-way, comm-module: lost}\n");
    editor.open(site, Example.SITE);
    assertThat(
            byCode(
                editor.next(one -> one.getUri().equals(types.toUri().toString())).getDiagnostics()))
        .containsKey("schema.bad-value");
    assertThat(editor.open(types, TYPES)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "weather-station: {at: Prop|17 + 8|- unit: Propagation|8",
        "device-type: four-way|15|id: four-way|4",
      })
  void aNameLeadsToWhereItIsGiven(String piece, String on, String target, int column)
      throws Exception {
    String text = Example.with("address: 2\n", "address: 2\n    device-type: four-way\n");
    editor.open(site, text);
    int offset = on.contains("+") ? 25 : Integer.parseInt(on);
    List<? extends Location> found = definition(position(text, piece, offset));
    assertThat(found).hasSize(1);
    Path file = Path.of(java.net.URI.create(found.get(0).getUri()));
    String there = file.equals(site) ? text : TYPES;
    int start = TestEditor.index(there, found.get(0).getRange().getStart());
    assertThat(start).isEqualTo(there.indexOf(target) + column);
  }

  @Test
  void anAliasLeadsToItsAnchor() throws Exception {
    String text =
        Example.SITE
            .replaceFirst("conductors: \\[A, B]", "conductors: &pair [A, B]")
            .replaceFirst("conductors: \\[A, B]", "conductors: *pair");
    editor.open(site, text);
    List<? extends Location> found = definition(position(text, "*pair", 2));
    assertThat(found)
        .extracting(Location::getRange)
        .extracting(Range::getStart)
        .containsExactly(position(text, "&pair", 0));
  }

  private List<? extends Location> definition(Position at) throws Exception {
    return got(editor
            .server()
            .getTextDocumentService()
            .definition(new DefinitionParams(document(site), at)))
        .getLeft();
  }

  @Test
  void aUnitShowsItsFiguresAndAResultThePageOfItsRule() throws Exception {
    String text =
        Example.with("address: 3", "address: 4")
            .replace(
                "supply: 5 V}]}",
                "supply: 5 V}], traffic: {broadcast: {registers: 12, every: 5 s}}}");
    editor.open(site, text);
    assertThat(hover(position(text, "Seedling North", 3)))
        .contains("Idle voltage: ", " mV", "Weakest received voltage: ", "Pair resistance")
        .contains("acceptable from ", "Readings: up to 10.");
    assertThat(hover(position(text, "address: 4", 9)))
        .contains("**Server address**", "# address.gap", "## Why", "## Sources")
        .doesNotContain("## Breaks the rule");
  }

  private String hover(Position at) throws Exception {
    Hover hover =
        got(editor.server().getTextDocumentService().hover(new HoverParams(document(site), at)));
    return hover.getContents().getRight().getValue();
  }

  /** A piece is deleted, and asked for at the place where it was. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stage: |planned|commissioned,planned",
        "role: |follower|follower,head",
        "{at: |Propagation|Propagation,Seedling North,Hardening Bay",
        "termination: |none|none",
        "conductors: [A, |B, G|A,B,C,G",
        "shielded: |true|false,true",
      },
      ignoreLeadingAndTrailingWhitespace = false)
  void completionKnowsTheWordsOfAPlace(String before, String piece, String wanted)
      throws Exception {
    int index = Example.SITE.indexOf(before + piece) + before.length();
    assertThat(index).isGreaterThan(before.length());
    String text = Example.SITE.substring(0, index) + Example.SITE.substring(index + piece.length());
    editor.open(site, text);
    assertThat(complete(text, index)).containsExactly(wanted.split(","));
  }

  @Test
  void completionKnowsKeysTypesRulesAndKindsOfItem() throws Exception {
    String item = Example.SITE + "  - ";
    editor.open(site, item);
    assertThat(complete(item, item.length()))
        .containsExactly("unit", "repeater", "equipment", "converter");
    String type = Example.SITE + "    device-type: ";
    editor.type(site, 2, type);
    assertThat(complete(type, type.length())).containsExactly("eight-way", "four-way");
    String rule = Example.SITE + "suppressions:\n  - rule: addr";
    editor.type(site, 3, rule);
    assertThat(complete(rule, rule.length()))
        .contains("address.gap", "signal.weak")
        .doesNotContain("suppression.unused", "yaml.syntax");
    String key = Example.SITE.replace("stage: planned", "sta");
    editor.type(site, 4, key);
    assertThat(complete(key, key.indexOf("sta") + 3))
        .contains("stage", "supervision")
        .doesNotContain("chain");
    String broken = "format: 1\nchain:\n  - unit: A\n    ro\n  - {unit: [";
    editor.type(site, 5, broken);
    assertThat(complete(broken, broken.indexOf("ro\n") + 2)).contains("role", "address");
  }

  private List<String> complete(String text, int offset) throws Exception {
    String before = text.substring(0, offset);
    Position at =
        new Position(
            (int) before.chars().filter(c -> c == '\n').count(),
            offset - (before.lastIndexOf('\n') + 1));
    return got(
            editor
                .server()
                .getTextDocumentService()
                .completion(new CompletionParams(document(site), at)))
        .getLeft()
        .stream()
        .map(CompletionItem::getLabel)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "untitled:Untitled-1",
        "http://example.org/sites/a.yaml",
        "file://host/sites/a.yaml",
        "file:///sites/%zz.yaml",
        "not a uri",
        "",
        "file:///nowhere/sites/a.yaml"
      })
  void aTextThatIsNoFileHereIsCheckedAllTheSame(String uri) throws Exception {
    assertThat(byCode(editor.open(uri, Example.with("address: 3", "address: 2"))))
        .containsKey("address.duplicate");
  }

  @Test
  void textsThatAreHugeOrNoSiteDoNoHarm() throws Exception {
    assertThat(byCode(editor.open(site, Example.SITE + "# " + "x".repeat(2 << 20))))
        .containsOnlyKeys("file.too-large");
    assertThat(editor.open(folder.resolve("compose.yaml"), "services: {a: [1, 2]}\n")).isEmpty();
    assertThat(editor.type(site, 2, "[".repeat(100_000))).isNotEmpty();
    assertThat(editor.type(site, 3, "\uD800\u0000 \uFEFF: {")).isNotEmpty();
    assertThat(editor.type(site, 4, Example.SITE)).isEmpty();
  }

  /** RFC 8089 lets the host be named; and not every editor escapes a space. */
  @ParameterizedTest
  @ValueSource(strings = {"file://localhost%s/sites/a b.yaml", "file://%s/sites/a%%20b.yaml"})
  void theFileIsFoundInOtherFormsOfItsUri(String form) throws Exception {
    String uri = String.format(form, folder.toUri().getRawPath().replaceAll("/$", ""));
    String text = Example.with("address: 2\n", "address: 2\n    device-type: three-way\n");
    assertThat(byCode(editor.open(uri, text))).containsKey("reference.unknown");
  }

  /** A checkout of another branch touches the files that apply to all sites again and again. */
  @Test
  void aStormOfChangesDoesNotKeepAnybodyWaiting() throws Exception {
    int texts = 20;
    for (int i = 0; i < texts; i++) {
      editor.send(folder.resolve("sites/site-" + i + ".yaml").toUri().toString(), Example.SITE);
    }
    for (int i = 0; i < texts; i++) {
      editor.shown(folder.resolve("sites/site-" + i + ".yaml").toUri().toString(), 1);
    }
    for (int i = 0; i < 2_000; i++) {
      editor
          .server()
          .getWorkspaceService()
          .didChangeWatchedFiles(new DidChangeWatchedFilesParams(List.of()));
    }
    got(
        editor
            .server()
            .getTextDocumentService()
            .hover(new HoverParams(document(site), new Position(0, 0))));
    // Each text waits for one check at a time; without that, there would be 40 000.
    assertThat(editor.waiting()).isLessThan(20_000);
  }

  @Test
  void aTextThatIsClosedAndOpenedAgainAtOnceIsChecked() throws Exception {
    String wrong = Example.with("address: 3", "address: 4");
    String uri = site.toUri().toString();
    for (int i = 0; i < 50; i++) {
      editor.send(uri, wrong);
      editor
          .server()
          .getTextDocumentService()
          .didClose(new DidCloseTextDocumentParams(document(site)));
      editor.send(uri, wrong);
      got(
          editor
              .server()
              .getTextDocumentService()
              .hover(new HoverParams(document(site), new Position(0, 0))));
      assertThat(editor.last(uri).getDiagnostics()).isNotEmpty();
    }
  }

  /** What throws the same in our own code is a failure, and not a method that is not known. */
  @Test
  void aFailureOfOursIsReported() {
    assertThat(EditorServer.error(new UnsupportedOperationException()).getMessage())
        .isEqualTo("the tool failed, please report it: java.lang.UnsupportedOperationException");
  }

  /** JSON-RPC 2.0, chapter 5.1: -32601 is a method that does not exist. */
  @Test
  void aMethodThatIsNotKnownIsAnsweredAsTheProtocolWants() {
    assertThatThrownBy(
            () ->
                got(
                    editor
                        .server()
                        .getTextDocumentService()
                        .foldingRange(new FoldingRangeRequestParams(document(site)))))
        .cause()
        .asInstanceOf(InstanceOfAssertFactories.type(ResponseErrorException.class))
        .extracting(answer -> answer.getResponseError().getCode())
        .isEqualTo(-32601);
  }
}
