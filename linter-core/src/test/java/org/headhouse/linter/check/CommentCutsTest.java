package org.headhouse.linter.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommentCutsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'title: House #14'             | 30:8",
        "'title: House\t#14 '           | 30:8",
        "'title: Pépinière #14'         | 30:8",
        "'title: House #14 and #15'     |",
        "'title: House # 14'            |",
        "'title: House #'               |",
        "'title: House ## 14'           |",
        "'title: House ##'              |",
        "'title: House#14'              |",
        "'title: \"House\" #14'         |",
        "'title: \"House #14\"'         |",
        "'title: \"see\" #14'           |",
        "'# title: House #14'           |",
        "'supervision: #14'             |",
      })
  void cutsOneWord(String line, String place) {
    assertThat(
            Checks.of(Example.SITE + line + "\n").results().stream()
                .filter(result -> result.rule().equals("yaml.comment-cut"))
                .map(
                    result ->
                        result.location().region().startLine()
                            + ":"
                            + result.location().region().startColumn()))
        .isEqualTo(place == null ? java.util.List.of() : java.util.List.of(place));
  }

  @Test
  void itemsOfListsAreNames() {
    String site =
        Example.SITE
            + "supervision:\n  link: serial\n  zones:\n    - Propagation #1\n    - Seedling North\n"
            + "    - Hardening Bay\n";
    assertThat(Checks.places(site)).containsExactly("33:7 yaml.comment-cut");
  }

  @Test
  void otherValuesHaveComments() {
    assertThat(Checks.places(Example.with("address: 3", "address: 3 #see-plan"))).isEmpty();
  }

  @Test
  void theMessageHasTheWholeName() {
    assertThat(Checks.of(Example.SITE + "title: House #14\n").results())
        .extracting(Result::message)
        .singleElement()
        .satisfies(
            message -> {
              assertThat(message.fact()).isEqualTo("\"House\" ends before #14");
              assertThat(message.remedy()).startsWith("write \"House #14\" in quotes");
            });
  }
}
