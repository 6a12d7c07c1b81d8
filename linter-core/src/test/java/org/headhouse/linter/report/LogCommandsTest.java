package org.headhouse.linter.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The forms in which the documentation of two servers that run builds gives their commands. */
class LogCommandsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'::error file=x::y'              | ':\uFFFDerror file=x::y'",
        "'  ::stop-commands::t'           | '  :\uFFFDstop-commands::t'",
        "'##[group]x'                     | '#\uFFFD[group]x'",
        "'a ##vso[task.setvariable]b'     | 'a #\uFFFDvso[task.setvariable]b'",
        "'sites/a.yaml:1:1: ##[error] b'  | 'sites/a.yaml:1:1: #\uFFFD[error] b'",
        "'###[x] ##vso[y]'                | '##\uFFFD[x] #\uFFFDvso[y]'",
        "'## heading [a]'                 | '## heading [a]'",
        "'a::b'                           | 'a::b'",
        "'# [a]'                          | '# [a]'",
      })
  void marksAreBroken(String line, String broken) {
    assertThat(TextReport.printable(line)).isEqualTo(broken);
  }
}
