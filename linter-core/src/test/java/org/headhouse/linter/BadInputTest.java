package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever comes in, a clear result with a place comes out. */
class BadInputTest {

  @Test
  void theExampleIsClean() {
    assertThat(Checks.lines(Example.SITE)).isEmpty();
  }

  @Test
  void lineEndsAndByteOrderMarkDoNotMatter() {
    String crlf = "\uFEFF" + Example.SITE.replace("\n", "\r\n");
    assertThat(Checks.places(Checks.of(crlf.getBytes(UTF_8)))).isEmpty();
    String wrong = "\uFEFF" + Example.with("address: 3", "address: 2").replace("\n", "\r\n");
    assertThat(Checks.places(Checks.of(wrong.getBytes(UTF_8))))
        .containsExactly("25:14 address.duplicate");
  }

  static List<Arguments> texts() {
    String bomb =
        """
        a: &a [x, x, x, x, x, x, x, x, x]
        b: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]
        c: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]
        d: &d [*c, *c, *c, *c, *c, *c, *c, *c, *c]
        e: &e [*d, *d, *d, *d, *d, *d, *d, *d, *d]
        f: &f [*e, *e, *e, *e, *e, *e, *e, *e, *e]
        g: [*f, *f, *f, *f, *f, *f, *f, *f, *f]
        """;
    return List.of(
        Arguments.of("", "1:1 schema.wrong-type"),
        Arguments.of("# only a comment\n", "1:1 schema.wrong-type"),
        Arguments.of("just text\n", "1:1 schema.wrong-type"),
        Arguments.of("format: 1\n\tsite: a\n", "2:1 yaml.syntax"),
        Arguments.of("format: 1\nsite: a\u0007b\n", "2:8 yaml.syntax"),
        Arguments.of("a: [1, 2\n", "1:4 yaml.syntax"),
        Arguments.of("a: b: c\n", "1:5 yaml.syntax"),
        Arguments.of("a:" + "b".repeat(1100) + ": c\n", "1:1103 yaml.syntax"),
        Arguments.of("a:\n  b: [c\n] d: e\n", "3:3 yaml.syntax"),
        Arguments.of("a: *nowhere\n", "1:4 yaml.syntax"),
        Arguments.of("a: &a [*a]\n", "1:8 yaml.syntax"),
        Arguments.of(bomb, "6:12 file.too-large"),
        Arguments.of("a: " + "[".repeat(20_000), "1:67 file.too-large"),
        Arguments.of("a: \"" + "x".repeat(3_000_000) + "\"\n", "1:1 file.too-large"),
        Arguments.of(Example.SITE + "---\nformat: 1\n", "30:1 yaml.several-documents"),
        Arguments.of(Example.with("stage: planned", "stage: !foo planned"), "3:8 yaml.syntax"),
        Arguments.of(
            Example.with("stage: planned", "stage: planned\nstage: planned"),
            "4:1 yaml.duplicate-key"),
        Arguments.of(Example.with("address: 3", "address: 1e20"), "25:14 yaml.ambiguous-scalar"),
        Arguments.of(
            Example.with("address: 3", "address: 100000000000000000000"),
            "25:14 schema.out-of-range"),
        Arguments.of(Example.with("address: 3", "address: 03"), "25:14 yaml.ambiguous-scalar"),
        Arguments.of(Example.with("shielded: true", "shielded: yes"), "5:81 yaml.ambiguous-scalar"),
        Arguments.of(Example.with("40 m", "40"), "14:20 schema.bad-quantity"),
        Arguments.of(Example.with("40 m", "40 metres"), "14:20 schema.bad-quantity"),
        Arguments.of(Example.with("role: head", "rôle: head"), "8:5 schema.unknown-key"),
        Arguments.of(Example.with("    role: head\n", ""), "7:5 schema.missing-key"));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void textsThatAreNoSites(String text, String expected) {
    assertThat(Checks.places(text)).containsExactly(expected);
    assertThat(Checks.of(text).notifications()).isEmpty();
  }

  @Test
  void otherEncodingsAreToldWithTheirPlace() {
    byte[] latin = Example.with("Hardening Bay", "Pépinière").getBytes(ISO_8859_1);
    assertThat(Checks.places(Checks.of(latin))).containsExactly("23:12 file.encoding");
    assertThat(Checks.places(Checks.of(Example.SITE.getBytes(UTF_16))))
        .containsExactly("1:1 file.encoding");
  }

  @Test
  void aFileOverTheLimitIsNotReadToItsEnd() {
    byte[] large = new byte[30 << 20];
    assertThat(Checks.places(Checks.of(large))).containsExactly("1:1 file.too-large");
  }

  @Test
  void aFileThatCannotBeReadIsToldAndTheOthersAreChecked() {
    CheckReport report = Checks.linter().checkFiles(List.of(Path.of("no", "such.yaml")));
    assertThat(report.results()).isEmpty();
    assertThat(report.notifications())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.file()).isEqualTo("no/such.yaml");
              assertThat(one.text()).isEqualTo("the file cannot be read: it does not exist");
            });
  }
}
