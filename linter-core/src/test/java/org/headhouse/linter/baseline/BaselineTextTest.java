package org.headhouse.linter.baseline;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BaselineTextTest {
  private static final Map<String, String> FAULTY =
      Map.of(
          "sites/b.yaml",
          Example.with("site: example", "site: b")
              .replace("termination: none", "termination: 120 ohm"),
          "sites/a.yaml",
          Example.with("site: example", "site: a")
                  .replace("shielded: true", "shielded: false")
                  .replace("Hardening Bay", "Bä\\\"y 2")
              + "supervision: {link: serial, zones: [Propagation, Seedling North]}\n");

  private static final String WRITTEN =
      """
      {"baseline-format":1}
      {"file":"sites/a.yaml","site":"a","at":"line/cable/shielded","rule":"cable.unshielded","value":"false"}
      {"file":"sites/a.yaml","site":"a","at":"supervision","rule":"supervision.zone-missing","unit":"Bä\\\\\\"y 2"}
      {"file":"sites/b.yaml","site":"b","at":"chain/Seedling North/termination","rule":"termination.mid-line","value":"120 ohm"}
      """;

  @TempDir private Path folder = Path.of("");

  private Baseline read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve(OldDebt.NAME), text);
    return Baseline.read(file, OldDebt.NAME, SitePaths.of(file, folder));
  }

  @Test
  void oneSortedLineForEachResult() throws IOException {
    assertThat(new OldDebt(folder).take(FAULTY)).isEqualTo(WRITTEN);
    assertThat(WRITTEN.lines().skip(1)).isSorted();
  }

  @Test
  void writingAgainChangesNothing() throws IOException {
    OldDebt debt = new OldDebt(folder);
    assertThat(debt.take(FAULTY)).isEqualTo(debt.take(FAULTY));
    assertThat(OldDebt.text(read(WRITTEN))).isEqualTo(WRITTEN);
    assertThat(read(WRITTEN).size()).isEqualTo(3);
  }

  /** What a merge or an editor may leave behind. */
  @ParameterizedTest
  @ValueSource(
      strings = {"turned", "twice", "blank lines", "line ends", "byte order mark", "no end"})
  void harmlessChanges(String what) throws IOException {
    List<String> lines = WRITTEN.lines().toList();
    String text =
        switch (what) {
          case "turned" ->
              lines.get(0) + "\n" + lines.get(3) + "\n" + lines.get(1) + "\n" + lines.get(2);
          case "twice" -> WRITTEN + lines.get(2) + "\n";
          case "blank lines" -> WRITTEN.replace("\n", "\n\n");
          case "line ends" -> WRITTEN.replace("\n", "\r\n");
          case "byte order mark" -> "\uFEFF" + WRITTEN;
          default -> WRITTEN.stripTrailing();
        };
    assertThat(OldDebt.text(read(text))).isEqualTo(WRITTEN);
  }

  /**
   * A baseline of 42 MB took all memory; what is refused is told with the line it is refused at.
   */
  @ParameterizedTest
  @CsvSource({
    "60000, 10, 50001, 50000 lines",
    "30000, 500, 1[0-9]{4}, 10485760 bytes",
    "2, 21000000, 2, 10485760 bytes"
  })
  void tooLargeAFileIsNotReadToItsEnd(int lines, int length, String line, String limit) {
    String start = WRITTEN.lines().findFirst().orElseThrow() + "\n";
    StringBuilder text = new StringBuilder(start);
    for (int i = 0; i < lines; i++) {
      String value = String.valueOf(i) + "x".repeat(length);
      text.append("{\"file\":\"a\",\"at\":\"b\",\"rule\":\"c\",\"value\":\"" + value + "\"}\n");
    }
    assertThatThrownBy(() -> read(text.toString()))
        .isInstanceOf(UnusableBaseline.class)
        .hasMessageMatching(
            OldDebt.NAME
                + ":"
                + line
                + ": the file has more than "
                + limit
                + ", and the rest is.*");
  }

  /** Whoever writes a baseline hears at once that it could not be read. */
  @Test
  void aBaselineThatCouldNotBeReadIsNotWritten() throws IOException {
    StringBuilder text = new StringBuilder(WRITTEN.lines().findFirst().orElseThrow() + "\n");
    for (int i = 1; i < BaselineText.MOST_LINES; i++) {
      text.append("{\"file\":\"a\",\"at\":\"" + i + "\",\"rule\":\"c\"}\n");
    }
    Baseline largest = read(text.toString());
    assertThat(OldDebt.text(largest)).hasLineCount(BaselineText.MOST_LINES);
    Result one = Checks.of(Example.with("address: 3", "address: 4")).results().get(0);
    Baseline larger = largest.renewed(List.of(one), Set.of(), false);
    assertThatThrownBy(() -> larger.write(OutputStream.nullOutputStream()))
        .hasMessage(
            "it would have 50001 lines, more than can be read; fix some of the results, or divide the"
                + " sites into folders with a baseline each");
  }

  private static final String ENTRY =
      "{\"file\":\"a.yaml\",\"at\":\"site\",\"rule\":\"site.file-name\"";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''                            | 1: it is empty
          no JSON                       | 1: it is not a JSON object on one line
          []                            | 1: it is not a JSON object on one line
          {}                            | 1: the first line has to be {"baseline-format":1}
          {"baseline-format":"1"}       | 1: the first line has to be {"baseline-format":1}
          {"baseline-format":2}         | 1: format 2 is not known here, format 1 is: take the version of the linter that wrote it, or
          {"baseline-format":1}@<<<<<<< ours       | 2: a mark of a merge that was not finished
          {"baseline-format":1}@@=======           | 3: a mark of a merge that was not finished
          {"baseline-format":1}@ENTRY}@{"file":"a  | 3: it is not a JSON object on one line
          {"baseline-format":1}@ENTRY} {}          | 2: it is not a JSON object on one line
          {"baseline-format":1}@ENTRY,"at":"b"}    | 2: it is not a JSON object on one line
          {"baseline-format":1}@{"baseline-format":1} | 2: there is no key "baseline-format"
          {"baseline-format":1}@{"file":"a.yaml","at":"b"} | 2: the key "rule" is missing
          {"baseline-format":1}@ENTRY,"line":3}    | 2: there is no key "line"
          {"baseline-format":1}@ENTRY,"value":3}   | 2: "value" is not a text
          {"baseline-format":1}@ENTRY,"value":{"a":[1]}} | 2: "value" is not a text
          {"baseline-format":1}@ENTRY,"value":true} | 2: "value" is not a text
          {"baseline-format":1}@ENTRY,"value":{"a":1,"a":2}} | 2: it is not a JSON object on one line
          {"baseline-format":1}@ENTRY,"value":[1   | 2: it is not a JSON object on one line
          {"baseline-format":1}@null               | 2: it is not a JSON object on one line
          {"baseline-format":1}@ENTRY,"rule":null} | 2: it is not a JSON object on one line
          {"baseline-format":1}@{"file":"a.yaml","at":"b","rule":null} | 2: the key "rule" is missing
          {"baseline-format":1}@ENTRY,"times":1.0} | 2: "times" is not a number from 1 on
          {"baseline-format":1}@ENTRY,"times":true} | 2: "times" is not a number from 1 on
          {"baseline-format":1}@ENTRY,"level":"loud"} | 2: there is no level "loud"
          {"baseline-format":1}@ENTRY,"times":0}   | 2: "times" is not a number from 1 on
          {"baseline-format":1}@ENTRY,"times":9999999999} | 2: "times" is not a number from 1 on
          """)
  void aDamagedBaseline(String text, String told) {
    assertThatThrownBy(() -> read(text.replace("ENTRY", ENTRY).replace('@', '\n')))
        .isInstanceOf(UnusableBaseline.class)
        .hasMessageStartingWith(OldDebt.NAME + ":" + told)
        .hasMessageEndingWith(" write the baseline anew");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "9", "{\"a\":"})
  void whatGoesOnForever(String piece) {
    String line = ENTRY + ",\"value\":" + piece.repeat(3000);
    assertThatThrownBy(() -> read("{\"baseline-format\":1}\n" + line))
        .hasMessageContaining("2: it is not a JSON object on one line; ");
  }

  @Test
  void whatIsQuotedCannotGarbleATerminal() {
    String key = ",\"\\u001b[2J\\u202e\":1}";
    assertThatThrownBy(() -> read("{\"baseline-format\":1}\n" + ENTRY + key))
        .hasMessageContaining("2: there is no key \"\uFFFD[2J\uFFFD\"; ");
  }

  @Test
  void moreResultsThanCanBeCountedAreVeryMany() throws IOException {
    String times = ",\"times\":2147483647}\n";
    String other = ENTRY.replace("a.yaml", "b.yaml");
    Baseline known = read("{\"baseline-format\":1}\n" + ENTRY + times + other + times);
    assertThat(known.size()).isEqualTo(Integer.MAX_VALUE);
  }

  @Test
  void otherBytesThanUtf8() throws IOException {
    Path file = folder.resolve(OldDebt.NAME);
    Files.write(file, (WRITTEN + "\u00FF").getBytes(ISO_8859_1));
    assertThatThrownBy(() -> Baseline.read(file, "known", SitePaths.of(file, folder)))
        .hasMessageStartingWith("known:3: it is not UTF-8");
  }

  @Test
  void aMissingBaseline() {
    Path file = folder.resolve("none");
    assertThatThrownBy(() -> Baseline.read(file, "none", SitePaths.of(file, folder)))
        .isInstanceOfSatisfying(
            UnusableBaseline.class, missing -> assertThat(missing.isMissing()).isTrue())
        .hasMessage("the baseline none does not exist");
  }

  /** Files are told from the folder of the baseline, wherever the build runs. */
  @ParameterizedTest
  @CsvSource({
    "/repo, /repo, sites/a.yaml, sites/a.yaml",
    "/repo/plan, /repo, sites/a.yaml, plan/sites/a.yaml",
    "/, /repo, repo/sites/a.yaml, sites/a.yaml",
    "/repo/plan, /repo, /repo/other/a.yaml, other/a.yaml",
    "/repo, /repo/ci, sites/a.yaml, ../sites/a.yaml",
    "/repo, /repo, <text>, <text>"
  })
  void namesOfFiles(Path base, Path home, String shown, String kept) {
    SitePaths paths = new SitePaths(base, home);
    assertThat(paths.kept(shown)).isEqualTo(kept);
    assertThat(paths.shown(kept)).isEqualTo(shown);
  }

  /** Sites that are not looked at keep what is known of them, unless they are gone. */
  @Test
  void aPartIsRenewedByItself() throws IOException {
    OldDebt debt = new OldDebt(folder);
    debt.take(FAULTY);
    Path file = debt.file();
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/a.yaml"), "");
    SitePaths paths = SitePaths.of(file, folder);
    Baseline known = Baseline.read(file, OldDebt.NAME, paths);
    assertThat(known.renewed(List.of(), Set.of("sites/c.yaml"), true).size())
        .as("b is gone")
        .isEqualTo(2);
    assertThat(known.renewed(List.of(), Set.of("sites/c.yaml"), false).size())
        .as("b may lie elsewhere now")
        .isEqualTo(3);
    Files.writeString(folder.resolve("sites/b.yaml"), "");
    assertThat(known.renewed(List.of(), Set.of("sites/c.yaml"), true).size()).isEqualTo(3);
    assertThat(known.renewed(List.of(), Set.of("sites/b.yaml"), true).size()).isEqualTo(2);
    assertThat(known.renewed(List.of(), Set.of("sites/a.yaml"), true).size()).isEqualTo(1);
  }
}
