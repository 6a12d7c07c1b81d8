package org.headhouse.linter.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * No spelling alone makes a house one without vents, or a run one that needs no protection: common
 * practice, no source.
 */
class UnsafeWordTest {
  private static String with(String key, String value) {
    List<String> keys = new ArrayList<>(List.of("vents: roof", "on-stale-readings: close"));
    keys.removeIf(line -> line.startsWith(key + ":"));
    keys.add(key + ": " + value);
    return new SiteText()
        .unit("120 ohm", "10 m", "vents: none")
        .unit("none", "10 m", keys.toArray(String[]::new))
        .unit("120 ohm", "", "vents: none")
        .toString();
  }

  @ParameterizedTest
  @CsvSource({
    "vents, one",
    "vents, nine",
    "on-stale-readings, hod",
    "on-stale-readings, alrm",
    "run-to-next, insid",
    "surge-protection-to-next, fited"
  })
  void noGuessIsMade(String key, String value) throws IOException {
    String site = with(key, value);
    SiteLinter linter = SiteLinter.builder().build();
    for (FixKind kind : FixKind.values()) {
      assertThat(Fixing.fix(linter, "example.yaml", site, kind))
          .contains(key + ": " + value + "\n");
    }
  }

  @ParameterizedTest
  @CsvSource({"broadcasts: ignored, ignord", "idle-bias: not-needed, not-neded"})
  void norIsOneOfADevice(String written, String word) throws IOException {
    String site =
        new SiteText()
            .unit("120 ohm", "10 m", "vents: none")
            .equipment("Meter", "", "10 m")
            .unit("120 ohm", "", "vents: none")
            .toString();
    String wrong = written.replaceFirst(" .*", " " + word);
    assertThat(
            Fixing.fix(
                SiteLinter.builder().build(),
                "example.yaml",
                site.replace(written, wrong),
                FixKind.SAFE))
        .contains(wrong + "\n");
  }

  /** What is spelt in capitals is no guess, and neither is what nobody is hurt by. */
  @ParameterizedTest
  @CsvSource({
    "vents, NONE, none",
    "vents, rof, roof",
    "on-stale-readings, clsoe, close",
    "run-to-next, Inside, inside",
    "surge-protection-to-next, nonne, none"
  })
  void whatIsCertainIsFixed(String key, String value, String word) throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    assertThat(Fixing.fix(linter, "example.yaml", with(key, value), FixKind.SAFE))
        .contains(key + ": " + word + "\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "vents | one | write none, roof, side or roof-and-side",
        "vents | rof | write roof",
        "on-stale-readings | hod | write close, close-and-alarm, hold or alarm"
      })
  void theMessageNamesAllWords(String key, String value, String remedy) throws IOException {
    assertThat(LineCheck.of(with(key, value)).reportedBy("schema.bad-value"))
        .singleElement()
        .asString()
        .contains("; " + remedy + " [");
  }
}
