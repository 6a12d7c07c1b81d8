package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The van sheet has no list of signs: what each one means is in the row that has its number. */
class VanSignsTest {
  private static final Pattern SIGNS = Pattern.compile("sign ([0-9]+(?:, [0-9]+)*)");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+");

  static Stream<Arguments> sites() {
    Map<String, Document> pages = Sheets.ofFaultySamples().pages();
    return pages.keySet().stream()
        .filter(name -> name.endsWith("-van.html"))
        .map(
            name ->
                Arguments.of(name, pages.get(name), pages.get(name.replace("-van.html", ".html"))));
  }

  private static List<String> numbers(String text) {
    return NUMBER.matcher(text).results().map(MatchResult::group).toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sites")
  void eachNumberIsWhereItIsExplained(String name, Document van, Document site) {
    List<String> explained =
        van.select("tr.noted, p:has(.open)").stream()
            .map(Element::text)
            .flatMap(text -> SIGNS.matcher(text).results().limit(1))
            .flatMap(signs -> numbers(signs.group(1)).stream())
            .toList();
    List<String> drawn =
        site.select(".signs .level").stream().map(level -> numbers(level.text()).get(0)).toList();
    assertThat(explained).containsExactlyInAnyOrderElementsOf(drawn);
  }
}
