package org.headhouse.linter.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether two results are of one place: a fix changes spaces of names and numbers of items. */
class SamePlaceTest {

  @ParameterizedTest
  @CsvSource({
    "chain/Bay 2/role, Bay 2, chain/Bay 2/role, Bay 2, true",
    "chain/Bay  2/role, Bay 2, chain/Bay 2/role, 'Bay 2 ', true",
    "line/bias/0/at, '', line/bias/1/at, '', true",
    "zones/0, '', zones/12, '', true",
    "chain/Bay 2, '', chain/Bay 3, '', false",
    "zones/1a, '', zones/2a, '', false",
    "7/zones, '', 8/zones, '', false",
    "chain/x, Bay 2, chain/x, Bay 3, false",
    "chain/x, '', chain/y, '', false",
  })
  void placesInTheWordsOfTheSite(
      String place, String unit, String otherPlace, String otherUnit, boolean same) {
    String key = key("a.b", place, unit);
    assertThat(key.equals(key("a.b", otherPlace, otherUnit))).isEqualTo(same);
    assertThat(key).isNotEqualTo(key("a.c", place, unit));
  }

  private static String key(String rule, String logical, String unit) {
    @Nullable String name = unit.isEmpty() ? null : unit;
    return State.key(
        new Result(
            rule,
            Level.ERROR,
            new Message("fact", "reason", "remedy"),
            new Location("a.yaml", Region.START_OF_FILE, ""),
            logical,
            name,
            List.of(),
            null));
  }
}
