package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.headhouse.linter.files.UserError;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A share for slack is a number of percent. */
class SlackParameterTest {

  @ParameterizedTest
  @CsvSource({"10, 0.1", "0, 0", "12.5 %, 0.125", "100%, 1"})
  void percentAreAShare(String written, double share) throws UserError {
    assertThat(SlackParameter.of("linter.slack", written).share()).isEqualTo(share);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "ten", "-5", "101", "1e1", "10 m", "0,1", "NaN"})
  void anythingElseIsRefused(String written) {
    assertThatThrownBy(() -> SlackParameter.of("linter.slack", written))
        .isInstanceOf(UserError.class)
        .hasMessage(
            "linter.slack cannot be \""
                + written
                + "\": set a percentage from 0 to 100, such as 10");
  }
}
