package org.headhouse.linter.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** NO_COLOR: https://no-color.org ("when present and not an empty string"). */
class ColoursTest {
  @Test
  void aTerminalHasColours() {
    assertThat(Colours.areWanted(true, Map.of("TERM", "xterm"))).isTrue();
    assertThat(Colours.areWanted(true, Map.of("TERM", "xterm", "NO_COLOR", ""))).isTrue();
  }

  @Test
  void nothingElseHas() {
    assertThat(Colours.areWanted(false, Map.of("TERM", "xterm"))).isFalse();
    assertThat(Colours.areWanted(true, Map.of("TERM", "xterm", "NO_COLOR", "1"))).isFalse();
    assertThat(Colours.areWanted(true, Map.of("TERM", "dumb"))).isFalse();
    assertThat(Colours.areWanted(true, Map.of())).isFalse();
  }
}
