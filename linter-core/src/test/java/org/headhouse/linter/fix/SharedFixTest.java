package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;

/** Numbering all units anew mends every double address, and is one fix. */
class SharedFixTest {
  private static final String SITE =
      Example.SITE.replace("address: 2", "address: 1").replace("address: 3", "address: 1");

  @Test
  void resultsOfARuleShareOneFix() {
    IdentityHashMap<Fix, Boolean> fixes = new IdentityHashMap<>();
    List<Result> doubles =
        Checks.of(SITE).results().stream()
            .filter(result -> result.rule().equals("address.duplicate"))
            .toList();
    doubles.stream().map(Result::fix).filter(Objects::nonNull).forEach(fix -> fixes.put(fix, true));
    assertThat(doubles).hasSize(2).allMatch(result -> result.fix() != null);
    assertThat(fixes).hasSize(1);
  }

  @Test
  void aReportHasItOnce() {
    CheckReport report = Checks.of(SITE);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    assertThat(out.toString(UTF_8).split("\"fixes\"", -1)).hasSize(1 + 1);
  }
}
