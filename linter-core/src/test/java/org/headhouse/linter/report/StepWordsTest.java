package org.headhouse.linter.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.change.Check;
import org.headhouse.linter.change.PollingChange;
import org.headhouse.linter.change.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan says must be what people can do: common practice, no source. */
class StepWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | 2 | address from 1 as delivered to 2.",
        "1 | 1 | address 1, as delivered.",
        "  | 2 | address to 2.",
      })
  void theAddressOfANewDevice(Integer delivered, int address, String text) {
    assertThat(StepWords.of(new Step.Prepare("Palms", delivered, address, false, List.of())))
        .startsWith("Set \"Palms\" before its pair is landed: " + text);
  }

  /** A zone is a unit; a meter is in another list, and has no name to read back. */
  @Test
  void anotherDeviceIsNoZone() {
    PollingChange meter =
        new PollingChange(
            PollingChange.Client.SOFTWARE, PollingChange.Kind.ADD, "Meter", null, 10, null, false);
    assertThat(SafeguardWords.polling(List.of(meter)))
        .containsExactly("in the software add \"Meter\" at address 10");
    assertThat(SafeguardWords.of(new Check(Check.Kind.ANSWERS, List.of("Meter"), 10, null)))
        .isEqualTo("asked once by hand at address 10, \"Meter\" gives values of its own");
  }
}
