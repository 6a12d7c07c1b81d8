package org.headhouse.linter.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which file a known result may be met in, and which results are never known. */
class KnownFilesTest {
  private static final String FAULTY = Example.with("shielded: true", "shielded: false");
  private static final String FAULT = "cable.unshielded line/cable/shielded";

  @TempDir private Path folder = Path.of("");

  private CheckReport takenThenChecked(Map<String, String> before, Map<String, String> after)
      throws IOException {
    OldDebt debt = new OldDebt(folder);
    debt.take(before);
    return debt.check(after);
  }

  /** A renamed file keeps its results as long as it keeps its id, or its name. */
  @ParameterizedTest
  @CsvSource({
    "sites/example.yaml, example, sites/example/site.yaml, example, true",
    "sites/example.yaml, example, north/example.yml, example, true",
    "sites/example.yaml, example, sites/exemplar.yaml, example, true",
    "sites/example.yaml, example, sites/example.yaml, exemplar, true",
    "sites/example.yaml, example, sites/exemplar.yaml, exemplar, false"
  })
  void aRenamedFile(String file, String id, String renamed, String newId, boolean known)
      throws IOException {
    CheckReport report =
        takenThenChecked(
            Map.of(file, FAULTY), Map.of(renamed, FAULTY.replace("site: " + id, "site: " + newId)));
    assertThat(report.known()).hasSize(known ? 1 : 0);
    assertThat(OldDebt.absent(report)).isEqualTo(known ? List.of() : List.of(FAULT));
  }

  /** The file that the baseline knows is still there, though nobody looked at it. */
  @Test
  void aCopyIsNotKnown() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/example.yaml"), FAULTY);
    CheckReport report =
        takenThenChecked(Map.of("sites/example.yaml", FAULTY), Map.of("new/example.yaml", FAULTY));
    assertThat(OldDebt.fresh(report)).containsExactly(FAULT);
    assertThat(report.absent()).isEmpty();
  }

  @Test
  void aSiteThatIsGoneIsAbsent() throws IOException {
    CheckReport report =
        takenThenChecked(
            Map.of(
                "sites/example.yaml",
                FAULTY,
                "sites/b.yaml",
                FAULTY.replace("site: example", "site: b")),
            Map.of("sites/example.yaml", FAULTY));
    assertThat(report.absent())
        .singleElement()
        .hasToString(
            "AbsentResult[rule=cable.unshielded, file=sites/b.yaml, identity=Identity[site=b,"
                + " at=line/cable/shielded, unit=null, value=false, graded=null, detail=null], times=1]");
  }

  /** What other rules count on cannot be known before, nor hide that a result is gone. */
  @ParameterizedTest
  @CsvSource({
    "'role: head', 'role: haed', schema.bad-value",
    "'format: 1', 'format: [', yaml.syntax",
    "'format: 1', 'format: 1\nformat: 1', yaml.duplicate-key",
    "'cable-to-next: 40 m', 'cable-to-next: 40', schema.bad-quantity"
  })
  void whatOthersCountOnIsNeverKnown(String text, String broken, String rule) throws IOException {
    String file = "sites/example.yaml";
    Map<String, String> texts = Map.of(file, FAULTY.replace(text, broken));
    CheckReport report = takenThenChecked(texts, texts);
    assertThat(report.at(Level.NOTE)).extracting("rule").contains(rule);
    assertThat(report.known()).extracting("rule").doesNotContain(rule);
    CheckReport broke = takenThenChecked(Map.of(file, FAULTY), texts);
    assertThat(broke.at(Level.NOTE)).extracting("rule").contains(rule);
    assertThat(broke.absent()).isEmpty();
  }

  @Test
  void whatIsSuppressedIsNotTaken() throws IOException {
    String suppressed =
        FAULTY + "suppressions: [{rule: cable.unshielded, justification: Short and indoors.}]\n";
    Map<String, String> texts = Map.of("sites/example.yaml", suppressed);
    OldDebt debt = new OldDebt(folder);
    assertThat(debt.take(texts)).isEqualTo("{\"baseline-format\":1}\n");
    assertThat(debt.check(Map.of("sites/example.yaml", FAULTY)).known()).isEmpty();
    // Once suppressed, the entry is needed no more.
    debt.take(Map.of("sites/example.yaml", FAULTY));
    CheckReport report = debt.check(texts);
    assertThat(report.at(Level.NOTE)).isEmpty();
    assertThat(OldDebt.absent(report)).containsExactly(FAULT);
  }

  /** An id that two files share is found over the whole repository, and known like the others. */
  @Test
  void resultsOverTheRepositoryAreTaken() throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("north/example.yaml", Example.SITE);
    texts.put("south/example.yaml", Example.SITE);
    CheckReport report = takenThenChecked(texts, texts);
    assertThat(report.at(Level.NOTE)).isEmpty();
    assertThat(report.known()).extracting("rule").containsExactly("site.duplicate-id");
    texts.put("west/example.yaml", Example.SITE);
    assertThat(OldDebt.fresh(new OldDebt(folder).check(texts))).hasSize(1);
  }

  /** A result that became graver than it was is another one. */
  @Test
  void aWarningThatBecameAnErrorIsNew() throws IOException {
    String weak = Example.with("resistors: 510 ohm", "resistors: 650 ohm");
    String weaker = weak.replace("cable-to-next: 60 m", "cable-to-next: 900 m");
    CheckReport report =
        takenThenChecked(Map.of("example.yaml", weak), Map.of("example.yaml", weaker));
    assertThat(report.at(Level.ERROR)).extracting("rule").contains("bias.weak");
    assertThat(OldDebt.absent(report)).containsExactly("bias.weak line/bias/Propagation/resistors");
  }
}
