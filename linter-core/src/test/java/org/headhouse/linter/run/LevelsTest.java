package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LevelsTest {
  /** The four words are those of SARIF 2.1.0, §3.27.10. */
  @ParameterizedTest
  @CsvSource({"error, ERROR", "warning, WARNING", "note, NOTE", "none, NONE"})
  void wordsAreLevels(String word, Level level) throws UserError {
    assertThat(Levels.of("linter.failLevel", word)).isEqualTo(level);
  }

  @ParameterizedTest
  @EnumSource
  void everyLevelHasItsWord(Level level) throws UserError {
    assertThat(Levels.of("linter.failLevel", level.word())).isEqualTo(level);
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
  void otherWordsAreQuotedWithWhatToWrite(String word, String remedy) {
    assertThatThrownBy(() -> Levels.of("linter.printLevel", word))
        .isInstanceOf(UserError.class)
        .hasMessage("linter.printLevel cannot be \"" + word + "\": write " + remedy);
  }
}
