package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.headhouse.linter.Example;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast as WCAG 2.2 defines it, over the colours of the style sheet, light and dark. */
class ContrastTest {
  private static final String STYLE = Sheets.page(Example.SITE).select("head style").html();

  /** The definition's own ends, and the grey that just passes (W3C, Understanding SC 1.4.3). */
  @ParameterizedTest
  @CsvSource({"#000000, #ffffff, 21.0", "#ffffff, #ffffff, 1.0", "#767676, #ffffff, 4.54"})
  void theFormulaIsThatOfTheStandard(String one, String other, double ratio) {
    assertThat(ratio(one, other)).isCloseTo(ratio, within(0.005));
  }

  /** 4.5 for text (1.4.3), 3 for the edges of fields and tables (1.4.11). */
  @ParameterizedTest
  @CsvSource({
    "ink, paper, 4.5", "quiet, paper, 4.5", "link, paper, 4.5", "error, paper, 4.5",
    "warning, paper, 4.5", "note, paper, 4.5", "ink, band, 4.5", "edge, paper, 3",
    "link, band, 3"
  })
  void everyPairHasEnough(String front, String back, double least) {
    for (int scheme = 0; scheme < 2; scheme++) {
      Map<String, String> colours = colours(scheme);
      assertThat(ratio(colours.getOrDefault(front, ""), colours.getOrDefault(back, "")))
          .as("%s on %s in scheme %d", front, back, scheme)
          .isGreaterThanOrEqualTo(least);
    }
  }

  private static Map<String, String> colours(int scheme) {
    String block =
        Pattern.compile(":root \\{(.*?)}", Pattern.DOTALL)
            .matcher(STYLE)
            .results()
            .toList()
            .get(scheme)
            .group(1);
    Map<String, String> colours = new HashMap<>();
    Pattern.compile("--([a-z]+): (#[0-9a-f]{6});")
        .matcher(block)
        .results()
        .forEach((MatchResult match) -> colours.put(match.group(1), match.group(2)));
    return colours;
  }

  private static double ratio(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    int rgb = Integer.parseInt(colour.substring(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double share = (channel & 0xFF) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
