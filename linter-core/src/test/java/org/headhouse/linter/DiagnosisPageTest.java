package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.diagnosis.SiteDiagnosis;
import org.headhouse.linter.report.DiagnosisText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the page on diagnosis shows is what the linter computes. */
class DiagnosisPageTest {
  private static final Path PAGE = Path.of("docs/diagnosis.md");

  private static String block(String mark) throws IOException {
    Matcher matcher =
        Pattern.compile("<!-- " + Pattern.quote(mark) + " -->\n```[a-z]+\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(PAGE));
    assertThat(matcher.find()).as(mark).isTrue();
    return matcher.group(1);
  }

  private static SiteLinter linter() throws IOException {
    return SiteLinter.builder()
        .deviceTypes(SiteInput.text("device-types.yaml", block("example: device-types")))
        .build();
  }

  @Test
  void theSiteIsSound() throws IOException {
    assertThat(linter().checkText("willow-end.yaml", block("example: site")).results()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"first", "second", "third"})
  void eachVisitLeavesWhatThePageSays(String visit) throws IOException {
    String site = block("example: site") + block("readings: " + visit);
    List<SiteDiagnosis> diagnoses = new ArrayList<>();
    linter().diagnose(Stream.of(SiteInput.text("willow-end.yaml", site)), diagnoses::add);
    assertThat(String.join("\n", DiagnosisText.of(diagnoses.get(0))) + "\n")
        .isEqualTo(block("output: " + visit));
  }
}
