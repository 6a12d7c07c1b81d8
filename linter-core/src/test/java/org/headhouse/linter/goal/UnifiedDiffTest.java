package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The unified format as POSIX.1-2017 describes it for {@code diff -u}. */
class UnifiedDiffTest {
  static Stream<Arguments> cases() {
    return Stream.of(
        Arguments.of("the same", "a\nb\n", "a\nb\n", ""),
        Arguments.of(
            "one line among many",
            "1\n2\n3\n4\n5\n6\n7\n8\n9\n",
            "1\n2\n3\n4\nfive\n6\n7\n8\n9\n",
            """
            --- a/sites/x.yaml
            +++ b/sites/x.yaml
            @@ -2,7 +2,7 @@
             2
             3
             4
            -5
            +five
             6
             7
             8
            """),
        Arguments.of(
            "a line more",
            "1\n2\n3\n",
            "1\n2\n2.5\n3\n",
            """
            --- a/sites/x.yaml
            +++ b/sites/x.yaml
            @@ -1,3 +1,4 @@
             1
             2
            +2.5
             3
            """),
        Arguments.of(
            "a line less, line ends of Windows",
            "1\r\n2\r\n3\r\n",
            "1\r\n3\r\n",
            """
            --- a/sites/x.yaml
            +++ b/sites/x.yaml
            @@ -1,3 +1,2 @@
             1
            -2
             3
            """),
        Arguments.of(
            "no end of line at the end",
            "1\n2",
            "1\ntwo",
            """
            --- a/sites/x.yaml
            +++ b/sites/x.yaml
            @@ -1,2 +1,2 @@
             1
            -2
            \\ No newline at end of file
            +two
            \\ No newline at end of file
            """),
        Arguments.of(
            "two places far apart",
            "a\n1\n2\n3\n4\n5\n6\n7\n8\nb\n",
            "A\n1\n2\n3\n4\n5\n6\n7\n8\nB\n",
            """
            --- a/sites/x.yaml
            +++ b/sites/x.yaml
            @@ -1,4 +1,4 @@
            -a
            +A
             1
             2
             3
            @@ -7,4 +7,4 @@
             6
             7
             8
            -b
            +B
            """));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void showsWhatDiffers(String name, String before, String after, String expected) {
    assertThat(UnifiedDiff.of("sites/x.yaml", before.getBytes(UTF_8), after.getBytes(UTF_8)))
        .as(name)
        .isEqualTo(expected.lines().toList());
  }
}
