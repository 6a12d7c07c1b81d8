package org.headhouse.linter.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An error where the value is read, a warning where it is not. */
class AmbiguousScalarsTest {

  private static List<String> told(String text) {
    return Checks.of(text).results().stream()
        .filter(result -> result.rule().equals("yaml.ambiguous-scalar"))
        .map(AmbiguousScalarsTest::place)
        .toList();
  }

  private static String place(Result result) {
    Region region = result.location().region();
    return region.startLine() + ":" + region.startColumn() + " " + result.level().word();
  }

  @ParameterizedTest
  @CsvSource({
    "title: NO, 3:8 error",
    "title: 12:30, 3:8 error",
    "nonsense: NO, 3:11 warning",
    "'nonsense:\n  a: {b: [NO]}', 4:11 warning",
    "'nonsense: {a: NO}\ntitle: NO', 3:15 warning; 4:8 error",
    "'commissioning: {date: 2026-03-14, by: NO}', 3:39 error",
    "'commissioning: {nonsense: 1, date: 2026-03-14, by: NO}', 3:52 error",
    "'commissioning: {date: 2026-03-14, by: A, nonsense: 2026-03-14}', 3:52 warning",
    "'commissioning: {date: 2026-03-14, by: 2026-03-14}', 3:39 error",
    "title: 'NO',",
    "title: 'No. 5',",
    "'commissioning: {date: 2026-03-14, by: A}',"
  })
  void levels(String keys, String expected) {
    String text = Example.with("stage: planned\n", keys + "\nstage: planned\n");
    assertThat(String.join("; ", told(text))).isEqualTo(expected == null ? "" : expected);
  }

  /** The remedy is what the key takes, and the result is gone once it is written. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shielded: true|shielded: no|write false|false",
        "shielded: true|shielded: YES|write true|true",
        "comm-module: fitted|comm-module: yes|write fitted, built-in or absent|fitted",
        "parity: even|parity: no|write none|none",
        "termination: none|termination: off|write none|none",
        "termination: none|termination: no|write none|none",
        "termination: none|termination: on|write for example 120 ohm or 120 ohm + 1 nF|120 ohm + 1 nF",
        "termination: none|termination: 1_20|write 120 ohm|120 ohm",
        "cable-to-next: 40 m|cable-to-next: 010|write 10 m or 10 ft|10 m",
        "cable-to-next: 40 m|cable-to-next: 12:30|write for example 42 m or 120 ft|42 m",
        "address: 2|address: 010|write 10|10",
        "address: 2|address: 02|write 2|2",
        "address: 2|address: 0o2|write 2|2",
        "address: 2|address: 2e0|write 2|2",
        "address: 2|address: 1_0|write 10|10",
        "address: 2|address: 12:30|write a whole number from 1 to 247|2",
        "address: 2|address: no|write a whole number from 1 to 247|2",
        "unit: Seedling North|unit: NO|write \"NO\" in quotes|\"NO\"",
        "unit: Seedling North|unit: 010|write \"010\" in quotes|\"010\"",
        "unit: Seedling North|unit: 12:30|write \"12:30\" in quotes|\"12:30\"",
        "site: example|site: 2026-03-14|write \"2026-03-14\" in quotes|\"2026-03-14\""
      })
  void remedies(String text, String faulty, String remedy, String value) {
    String key = faulty.substring(0, faulty.indexOf(": ") + 2);
    List<Result> results = ofReading(Example.with(text, faulty));
    assertThat(results)
        .isNotEmpty()
        .allSatisfy(
            result -> {
              assertThat(result.rule()).isEqualTo("yaml.ambiguous-scalar");
              assertThat(result.message().remedy()).isEqualTo(remedy);
            });
    assertThat(ofReading(Example.with(text, key + value))).isEmpty();
  }

  private static List<Result> ofReading(String text) {
    return Checks.of(text).results().stream()
        .filter(result -> result.rule().matches("(yaml|schema)\\..*"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "010|readers of YAML 1.1 take it for the number 8, those of YAML 1.2 for 10",
        "02|readers of YAML 1.1 take a leading zero for octal",
        "0o2|readers of YAML 1.1 take it for the text \"0o2\", those of YAML 1.2 for 2",
        "1_0|readers of YAML 1.1 take it for the number 10",
        "no|readers of YAML 1.1 take it for false"
      })
  void bothReadingsAreTold(String value, String reason) {
    assertThat(ofReading(Example.with("address: 2", "address: " + value)))
        .singleElement()
        .satisfies(result -> assertThat(result.message().reason()).isEqualTo(reason));
  }

  /** Of two numbers, either may be set on site. */
  @ParameterizedTest
  @CsvSource({"010, PROPOSED", "02, SAFE", "0o2, SAFE", "1_0, SAFE"})
  void theFixIsSafeWhereNobodyReadsAnotherNumber(String value, FixKind kind) {
    assertThat(ofReading(Example.with("address: 2", "address: " + value)))
        .singleElement()
        .extracting(result -> Objects.requireNonNull(result.fix()).kind())
        .isEqualTo(kind);
  }

  /** Behind a key that stands twice nothing is read, and that is what is told. */
  @Test
  void valuesOfDuplicateKeysAreNotToldToo() {
    String text = Example.with("stage: planned\n", "stage: planned\ntitle: a\ntitle: NO\n");
    assertThat(ofReading(text)).extracting(Result::rule).containsExactly("yaml.duplicate-key");
  }

  @Test
  void oneResultForAValueThatAnAliasBrings() {
    String text =
        Example.with("site: example", "site: example\ntitle: &a NO")
            .replace("address: 2", "address: *a");
    assertThat(ofReading(text)).extracting(Result::rule).containsExactly("yaml.ambiguous-scalar");
  }
}
