package org.headhouse.linter.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.report.StyledLine.Piece;
import org.headhouse.linter.report.StyledLine.Style;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;

class StyledLineTest {
  private static final Result RESULT =
      Checks.of(Example.with("address: 3", "address: 2")).results().get(0);

  /** SGR of ECMA-48: 1 is bold, 31 red, and no parameter ends all of them. */
  @Test
  void aTerminalShowsTheLevelInItsColourAndTheFactInBold() {
    assertThat(TextReport.styled(RESULT).get(0).shown(true))
        .isEqualTo(
            "example.yaml:25:14: \u001B[1;31merror\u001B[m: \u001B[1maddress 2 is used twice"
                + "\u001B[m [address.duplicate]");
  }

  @Test
  void withoutColoursALineIsItsText() {
    assertThat(TextReport.styled(RESULT).stream().map(line -> line.shown(false)))
        .isEqualTo(TextReport.lines(RESULT))
        .noneMatch(line -> line.contains("\u001B"));
  }

  /** A name in a file must not reach the terminal as a command to it. */
  @Test
  void whatIsNotPrintableIsShownWithoutColours() {
    StyledLine line = new StyledLine(List.of(new Piece(Style.STRONG, "a\u001B[2Jb")));
    assertThat(line.shown(true)).isEqualTo("a\uFFFD[2Jb");
  }
}
