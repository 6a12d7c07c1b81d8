package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpliceTest {

  private static Replacement put(String region, String text) {
    return new Replacement(region(region), text);
  }

  /** {@code line:column-line:column}. */
  private static Region region(String text) {
    String[] part = text.split("[-:]", -1);
    return new Region(
        Integer.parseInt(part[0]),
        Integer.parseInt(part[1]),
        Integer.parseInt(part[2]),
        Integer.parseInt(part[3]));
  }

  private static String applied(String text, Replacement... replacements) {
    return new String(Splice.apply(text.getBytes(UTF_8), List.of(replacements)), UTF_8);
  }

  @Test
  void allElseStays() {
    String text = "\uFEFFa: b\r\nc: \uD83C\uDF34 d\n";
    assertThat(applied(text)).isEqualTo(text);
    assertThat(applied(text, put("2:4-2:5", "x"), put("1:4-1:5", "")))
        .isEqualTo("\uFEFFa: \r\nc: x d\n");
    assertThat(applied("ab", put("1:3-1:3", "c"), put("1:1-1:1", "_"))).isEqualTo("_abc");
    assertThat(applied("ab\ncd", put("1:2-2:2", "-"))).isEqualTo("a-d");
    assertThat(applied("abc", put("1:1-1:2", "x"), put("1:2-1:3", "y"))).isEqualTo("xyc");
  }

  @Test
  void whatCannotBePut() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> applied("abc", put("1:1-1:3", "x"), put("1:2-1:3", "y")));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Splice.apply(new byte[] {(byte) 0xF6}, List.of()));
  }

  /** Whether what is put there is in doubt: sharing an edge is enough. */
  @ParameterizedTest
  @CsvSource({
    "1:1-1:3, 1:4-1:5, false",
    "1:1-1:3, 1:3-1:5, true",
    "1:1-1:3, 1:2-1:5, true",
    "1:1-1:9, 1:2-1:3, true",
    "1:5-1:5, 1:5-1:5, true",
    "1:5-1:5, 1:6-1:6, false",
    "1:1-1:3, 2:1-2:3, false",
    "1:1-2:3, 2:3-2:5, true",
    "1:1-2:3, 2:4-2:5, false",
    "1:1-3:1, 2:4-2:5, true",
    "1:9-1:9, 2:1-2:1, false",
  })
  void regionsTouch(String one, String other, boolean touch) {
    assertThat(Splice.touch(region(one), region(other))).isEqualTo(touch);
    assertThat(Splice.touch(region(other), region(one))).isEqualTo(touch);
  }
}
