package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Marks as in git-merge(1), "How conflicts are presented". */
class MergeMarksTest {
  private static final String ADDRESS = "    address: 3\n";

  static List<Arguments> conflicts() {
    String two =
        "<<<<<<< HEAD\n    address: 3\n=======\n    address: 4\n>>>>>>> add the north house\n";
    String three =
        "<<<<<<< HEAD\n    address: 3\n||||||| 3fe1\n    address: 5\n=======\n    address: 4\n>>>>>>> b\n";
    return List.of(
        Arguments.of(two, "25:1 file.merge-marks"),
        Arguments.of(two.replace("\n", "\r\n"), "25:1 file.merge-marks"),
        Arguments.of(three, "25:1 file.merge-marks"),
        Arguments.of(two + "    termination: none\n" + two, "25:1 31:1 file.merge-marks"),
        Arguments.of("    address: 3\n=======\n    address: 4\n", "26:1 file.merge-marks"),
        Arguments.of("    address: 3\n>>>>>>> b\n", "26:1 file.merge-marks"));
  }

  @ParameterizedTest
  @MethodSource("conflicts")
  void eachIsOneResultInsteadOfAFaultOfSyntax(String conflict, String expected) {
    List<String> places = Checks.places(Example.with(ADDRESS, conflict));
    assertThat(places)
        .isEqualTo(
            List.of(expected.split(" ")).stream()
                .filter(part -> part.contains(":"))
                .map(part -> part + " file.merge-marks")
                .toList());
  }

  /** YAML reads a list between brackets over lines that are not indented. */
  @Test
  void aFileThatCanStillBeReadIsNotChecked() {
    String site =
        Example.with(
            "[light, temperature]",
            "[light,\n<<<<<<< HEAD\n rain,\n=======\n>>>>>>> b\ntemperature]");
    assertThat(Checks.places(site)).containsExactly("5:1 file.merge-marks");
  }

  @Test
  void signsElsewhereAreText() {
    String site = Example.SITE + "title: \"<<<<<<< to the left\" # ======= and >>>>>>>\n";
    assertThat(Checks.places(site)).isEmpty();
  }
}
