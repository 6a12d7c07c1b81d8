package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaCheck;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** Format 1 with every key that it has. */
class ContractExampleTest {
  private static CheckReport check(String name) throws IOException {
    return SiteLinter.builder()
        .policy(SiteInput.text("linter.yaml", ContractExample.POLICY))
        .withoutBaseline()
        .deviceTypes(SiteInput.text("device-types.yaml", ContractExample.TYPES))
        .clock(Clock.fixed(Instant.parse("2026-11-25T00:00:00Z"), ZoneOffset.UTC))
        .build()
        .checkText(name, ContractExample.SITE);
  }

  @Test
  void breaksOnlyWhatItAccepts() throws IOException {
    for (String name : List.of("alder-brook.yaml", "alder-brook/site.yaml")) {
      CheckReport report = check(name);
      assertThat(report.notifications()).isEmpty();
      assertThat(report.results().stream().filter(result -> !result.suppressed()))
          .extracting(TextReport::inOneLine)
          .isEmpty();
      assertThat(report.results()).extracting(Result::rule).containsExactly("address.gap");
      assertThat(report.units()).isEqualTo(3);
    }
  }

  @Test
  void everyFileIsAcceptedByItsSchema() {
    assertThat(faults(FileKind.SITE, ContractExample.SITE)).isZero();
    assertThat(faults(FileKind.DEVICE_TYPES, ContractExample.TYPES)).isZero();
    assertThat(faults(FileKind.POLICY, ContractExample.POLICY)).isZero();
  }

  private static int faults(FileKind kind, String text) {
    var document = new YamlReader(Limits.DEFAULT).read(new SourceText("example.yaml", text));
    assertThat(document.findings()).isEmpty();
    var root = document.root();
    return root == null ? -1 : new SchemaCheck(kind).explain(root).size();
  }

  /** What a person sees does not depend on how an editor ends lines. */
  @Test
  void lineEndsDoNotMatter() throws IOException {
    byte[] crlf = ContractExample.SITE.replace("\n", "\r\n").getBytes(UTF_8);
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", ContractExample.TYPES))
            .build();
    List<Result> results =
        linter.check(Stream.of(new SiteInput("alder-brook.yaml", most -> crlf))).results();
    assertThat(results)
        .extracting(Result::location)
        .isEqualTo(locations(check("alder-brook.yaml")));
  }

  private static List<?> locations(CheckReport report) {
    return report.results().stream().map(Result::location).toList();
  }
}
