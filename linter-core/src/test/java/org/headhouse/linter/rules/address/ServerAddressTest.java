package org.headhouse.linter.rules.address;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * MODBUS over Serial Line V1.02, section 2.2: 0 is the broadcast address, 1 to 247 are those of
 * servers, 248 to 255 are reserved.
 */
class ServerAddressTest {
  private static final String TYPES =
      """
      format: 1
      device-types:
        - id: some
          address-limit: %d
      """;

  private static List<Result> at(String address, int limit) throws IOException {
    return SiteLinter.builder()
        .deviceTypes(SiteInput.text("device-types.yaml", TYPES.formatted(limit)))
        .build()
        .checkText(
            "example.yaml",
            Example.with("address: 3", "address: " + address + "\n    device-type: some"))
        .results();
  }

  private static String reported(String address, int limit) throws IOException {
    return at(address, limit).stream()
        .filter(result -> result.rule().matches("address\\.(reserved|beyond-limit)|schema\\..*"))
        .map(result -> result.level().word() + " " + result.rule())
        .reduce("", (all, one) -> all.isEmpty() ? one : all + ", " + one);
  }

  @Test
  void everyAddressThatAByteCanHold() throws IOException {
    for (int address = 0; address <= 255; address++) {
      boolean isServer = address >= 1 && address <= 247;
      assertThat(reported(String.valueOf(address), 247))
          .as("address %s", address)
          .isEqualTo(isServer ? "" : "error address.reserved");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, 247, error address.reserved",
    "0, 255, error address.reserved",
    "1, 1, ''",
    "2, 1, error address.beyond-limit",
    "63, 63, ''",
    "64, 63, error address.beyond-limit",
    "247, 63, error address.beyond-limit",
    "248, 63, error address.reserved",
    "247, 255, ''",
    "248, 255, warning address.reserved",
    "255, 255, warning address.reserved",
    "250, 250, warning address.reserved",
    // The device cannot be set to it, so its wider limit does not excuse it.
    "251, 250, error address.reserved",
    "-1, 247, error schema.out-of-range",
    "256, 255, error schema.out-of-range",
    "1.5, 247, error schema.wrong-type",
    "'\"3\"', 247, error schema.wrong-type",
    "~, 247, error schema.wrong-type"
  })
  void theLimitOfTheTypeCounts(String address, int limit, String expected) throws IOException {
    assertThat(reported(address, limit)).isEqualTo(expected);
  }

  @Test
  void theReservedAddressIsTheOnlyThingReported() throws IOException {
    assertThat(at("0", 247)).extracting(Result::rule).containsExactly("address.reserved");
    assertThat(at("0", 247)).extracting(Result::level).containsExactly(Level.ERROR);
  }
}
