package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnumParameterTest {
  /** The four words are those of SARIF 2.1.0, §3.27.10. */
  @ParameterizedTest
  @CsvSource({"error, ERROR", "warning, WARNING", "note, NOTE", "none, NONE"})
  void levelsHaveTheirWords(String word, Level level) throws UserError {
    assertThat(EnumParameter.of("linter.failLevel", word, Level.values(), Level::word))
        .isEqualTo(level);
  }

  @ParameterizedTest
  @CsvSource({"metric, METRIC", "us, US"})
  void unitsHaveTheirWords(String word, Measure measure) throws UserError {
    assertThat(EnumParameter.of("linter.units", word, Measure.values(), Measure::word))
        .isEqualTo(measure);
  }

  @ParameterizedTest
  @CsvSource({"A4, A4", "Letter, LETTER"})
  void papersHaveTheirWords(String word, Paper paper) throws UserError {
    assertThat(EnumParameter.of("linter.paper", word, Paper.values(), Paper::word))
        .isEqualTo(paper);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ERROR    | error
          warnings | warning
          nota     | note
          loud     | one of error, warning, note, none
          ''       | one of error, warning, note, none
          """)
  void otherLevelsAreQuotedWithWhatToWrite(String word, String remedy) {
    assertThatThrownBy(
            () -> EnumParameter.of("linter.printLevel", word, Level.values(), Level::word))
        .isInstanceOf(UserError.class)
        .hasMessage("linter.printLevel cannot be \"" + word + "\": use " + remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Leter    | Letter
          foolscap | one of A4, Letter
          ''       | one of A4, Letter
          """)
  void otherWordsAreQuotedWithWhatToWrite(String word, String remedy) {
    assertThatThrownBy(() -> EnumParameter.of("linter.paper", word, Paper.values(), Paper::word))
        .isInstanceOf(UserError.class)
        .hasMessage("linter.paper cannot be \"" + word + "\": use " + remedy);
  }
}
