package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.headhouse.linter.report.Paper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What WCAG 2.2 asks of a page and can be read off its elements; every kind of page. */
class PageStructureTest {
  private static final Map<String, Document> PAGES = new LinkedHashMap<>();

  static {
    Sheets.ofSamples().pages().forEach((name, page) -> PAGES.put("good " + name, page));
    Sheets.ofFaultySamples().pages().forEach((name, page) -> PAGES.put("faulty " + name, page));
    Papers.of(Papers.YEARLY, Papers.PROVED, Papers.line(20).replace("site: proved", "site: large"))
        .pages()
        .forEach((name, page) -> PAGES.put("proved " + name, page));
    hostile().forEach((name, page) -> PAGES.put("hostile " + name, page));
    PAGES.put("hostile", Sheets.page(Hostile.site()));
    PAGES.put("hostile materials", Jsoup.parse(Sheets.materials(Hostile.site(), Paper.A4)));
    PAGES.put("too long", Sheets.page(Hostile.tooLong()));
    PAGES.put("bare", Sheets.page("format: 1\n"));
  }

  private static Map<String, Document> hostile() {
    return Papers.of(Papers.YEARLY, Hostile.site()).pages();
  }

  static Stream<Arguments> pages() {
    return PAGES.entrySet().stream().map(page -> Arguments.of(page.getKey(), page.getValue()));
  }

  /** WCAG 2.2, 3.1.1 and 2.4.2. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void thePageHasALanguageAndATitle(String name, Document page) {
    assertThat(page.expectFirst("html").attr("lang")).isEqualTo("en");
    assertThat(page.title()).isNotBlank();
    assertThat(page.charset()).hasToString("UTF-8");
  }

  /** WCAG 2.2, 1.3.1 and 2.4.6: no level is left out on the way down. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void headingsAreInOrder(String name, Document page) {
    assertThat(page.select("h1")).hasSize(1);
    int last = 0;
    for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
      int level = heading.tagName().charAt(1) - '0';
      assertThat(level).as(heading.text()).isLessThanOrEqualTo(last + 1);
      assertThat(heading.text()).isNotBlank();
      last = level;
    }
  }

  /** WCAG 2.2, 1.3.1: each column and each row of a table has its heading. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void tablesHaveHeadings(String name, Document page) {
    assertThat(page.select("th:not([scope])")).isEmpty();
    for (Element table : page.select("table")) {
      Elements columns = table.select("thead th[scope=col]");
      for (Element row : table.select("tbody tr")) {
        if (row.child(0).is("th[scope=rowgroup]")) {
          assertThat(row.child(0).attr("colspan")).isEqualTo(String.valueOf(columns.size()));
          continue;
        }
        if (row.is(".notes")) {
          Element above = Objects.requireNonNull(row.previousElementSibling());
          assertThat(above.child(0).attr("rowspan")).isEqualTo("2");
          assertThat(row.children()).hasSize(1);
          assertThat(row.child(0).attr("colspan")).isEqualTo(String.valueOf(columns.size() - 1));
          continue;
        }
        assertThat(row.children()).hasSameSizeAs(columns);
        assertThat(row.child(0).is("th[scope=row]")).isTrue();
      }
    }
  }

  /** WCAG 2.2, 2.4.1: the first thing that is reached leads past the rest. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void theKeyboardReachesEverything(String name, Document page) {
    Element first = page.expectFirst("a, input, button, [tabindex]");
    assertThat(first.attr("href")).isEqualTo("#content");
    assertThat(page.select("main#content")).hasSize(1);
    assertThat(page.select("[tabindex]").eachAttr("tabindex")).allMatch("0"::equals);
    assertThat(page.select("header, main, main section, body > nav")).isNotEmpty();
    assertThat(page.body().children())
        .allMatch(child -> child.is("a.skip, header, nav, main"), "in a landmark");
  }

  /** WCAG 2.2, 4.1.2 and 1.3.1. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void everyFieldAndRegionHasAName(String name, Document page) {
    for (Element input : page.select("input")) {
      assertThat(input.attr("aria-label") + input.parents().select("label").text()).isNotBlank();
    }
    for (Element region : page.select("[role=region], nav, [role=note]")) {
      assertThat(region.attr("aria-label") + region.attr("aria-labelledby")).isNotBlank();
    }
    for (String ids : page.select("[aria-labelledby]").eachAttr("aria-labelledby")) {
      assertThat(ids.split(" ", -1))
          .allSatisfy(id -> assertThat(page.getElementById(id)).isNotNull());
    }
    assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
  }

  /** One file that needs nothing beside it. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void nothingOutsideIsAskedFor(String name, Document page) {
    assertThat(page.select("[src], link, script, object, iframe")).isEmpty();
    assertThat(page.select("style").html()).doesNotContain("url(", "@import", "http");
    for (String link : page.select("[href]").eachAttr("href")) {
      if (link.startsWith("#")) {
        assertThat(page.getElementById(link.substring(1))).as(link).isNotNull();
      } else {
        assertThat(link).matches("[A-Za-z0-9._~%-]+\\.(html|csv)");
      }
    }
  }

  /** Level and verdict stand there as words, not as a colour alone (WCAG 2.2, 1.4.1). */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void whatIsColouredIsAlsoSaid(String name, Document page) {
    for (Element level : page.select(".level")) {
      assertThat(level.text())
          .matches(
              "(\\d+, )?(error|warning|note):|\\d+|outside limit|below margin|stays open on a dead line");
    }
    for (Element open : page.select(".open")) {
      assertThat(open.text()).matches("Open (error|warning|note): .+ \\([a-z.-]+\\)");
    }
  }
}
