package org.headhouse.linter.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.figures.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class WiringDiagramTest {

  private static List<String> draw(DrawnSite drawn) {
    return new WiringDiagram(drawn.site(), drawn.results(), Measure.METRIC)
        .svg(PageFormat.A4, Detail.DRAWN, "drawing");
  }

  private static String drawOnePage(String text) {
    List<String> pages = draw(DrawnSite.of(text));
    assertThat(pages).hasSize(1);
    return pages.get(0);
  }

  static Element read(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement();
  }

  /** The lines of text that are seen, without the titles that tools show. */
  private static List<String> seen(String svg) throws Exception {
    List<String> seen = new ArrayList<>();
    NodeList texts = read(svg).getElementsByTagName("text");
    for (int i = 0; i < texts.getLength(); i++) {
      seen.add(texts.item(i).getLastChild().getTextContent());
    }
    return seen;
  }

  private static String desc(String svg) throws Exception {
    return read(svg).getElementsByTagName("desc").item(0).getTextContent();
  }

  @Test
  void theExampleShowsWhatIsWired() throws Exception {
    assertThat(seen(drawOnePage(Example.SITE)))
        .contains(
            "Wiring diagram: example",
            "head unit",
            "Propagation",
            "address 1",
            "A B G landed",
            "terminator 120 ohm",
            "to earth",
            "weather station",
            "light, temperature",
            "40 m",
            "Seedling North",
            "60 m",
            "Hardening Bay");
  }

  /** Each part of a line, by the text that it puts on the drawing. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "address: 2           | address: 2\\n    stub: 0.5 m                      | stub 0.50 m",
        "address: 2           | address: 2\\n    pair: crossed                    | pair crossed",
        "termination: none    | termination: 120 ohm + 1 nF                       | 120 ohm + 1 nF",
        "cable-to-next: 60 m  | cable-to-next: 60 m\\n    run-to-next: between-buildings | no surge protection",
        "cable-to-next: 60 m  | cable-to-next: 60 m\\n    surge-protection-to-next: fitted | surge protection",
        "cable-to-next: 60 m  | cable-to-next: 20 ft                              | 6.1 m",
        "'    cable-to-next: 60 m\\n' | ''                                             | length not known",
        "'    address: 2\\n' | ''                                                | no address",
        "parity: even,        | parity: even, bias: [{at: Seedling North, resistors: 560 ohm, supply: 5 V}], | bias 560 ohm each",
        "at: Propagation      | at: Seedling                                      | the weather station is not known"
      })
  void whatIsWrittenIsDrawn(String text, String other, String shown) throws Exception {
    String site = Example.with(text.replace("\\n", "\n"), other.replace("\\n", "\n"));
    assertThat(seen(drawOnePage(site))).anyMatch(line -> line.startsWith(shown));
  }

  @Test
  void aRepeaterTellsItsSidesAndSegments() throws Exception {
    SiteText text =
        new SiteText()
            .unit("120 ohm", "30 m")
            .repeater("Road", "120 ohm", "20 m")
            .unit("120 ohm", "");
    assertThat(seen(drawOnePage(text.toString())))
        .contains("repeater", "Road", "segment 1 in, 2 out", "terminator out", "20 m");
  }

  /** Behind a repeater its far side stands in for the head unit. */
  @Test
  void biasAtARepeaterTellsItsSide() throws Exception {
    SiteText text =
        new SiteText()
            .bias("Road", "470 ohm", "4.75 V")
            .unit("120 ohm", "30 m")
            .repeater("Road", "120 ohm", "20 m")
            .unit("120 ohm", "");
    assertThat(seen(drawOnePage(text.toString())))
        .containsSubsequence(
            "D1", "4.75 V", "D0", "common", "bias 470 ohm each", "on the out side");
  }

  /** Letters that a font may draw as wide as it likes are cut off at the edge of their area. */
  @Test
  void foreignLettersAreKeptInTheirArea() throws Exception {
    Element svg = read(drawOnePage(Example.SITE.replace("Hardening Bay", "חממה")));
    NodeList views = svg.getElementsByTagName("svg");
    assertThat(views.getLength()).isOne();
    Element view = (Element) views.item(0);
    assertThat(view.getAttribute("overflow")).isEqualTo("hidden");
    assertThat(view.getTextContent()).endsWith("\u2068חממה\u2069");
  }

  @Test
  void lengthsAreInFeetWhereWanted() throws Exception {
    DrawnSite drawn = DrawnSite.of(Example.SITE);
    String svg =
        new WiringDiagram(drawn.site(), drawn.results(), Measure.US)
            .svg(PageFormat.LETTER, Detail.DRAWN, "d")
            .get(0);
    assertThat(seen(svg)).contains("131.2 ft", "196.9 ft").doesNotContain("40 m");
  }

  /** The shape is seen, and the text tells the same. */
  @Test
  void aFaultHasASignAndItsMeaning() throws Exception {
    DrawnSite drawn = DrawnSite.of(Example.with("address: 3", "address: 2"));
    String svg = draw(drawn).get(0);
    assertThat(seen(svg)).contains("1");
    assertThat(desc(svg)).contains("sign 1 (error)");
    List<Mark> signs = signs(drawn);
    assertThat(signs).extracting(Mark::number).startsWith(1);
    assertThat(signs.get(0).results().get(0).message().fact()).contains("address 2");
    assertThat(signs(DrawnSite.of(Example.SITE))).isEmpty();
  }

  private static List<Mark> signs(DrawnSite drawn) {
    return new WiringDiagram(drawn.site(), drawn.results(), Measure.METRIC).signs();
  }

  @Test
  void whatIsAcceptedHasNoSign() {
    String site =
        Example.with("address: 3", "address: 4")
            + """
            suppressions:
              - {rule: address.gap, justification: Unit 3 is in store until the house is built.}
            """;
    DrawnSite drawn = DrawnSite.of(site);
    assertThat(drawn.results()).hasSize(1);
    assertThat(signs(drawn)).isEmpty();
  }

  @Test
  void theLineIsToldInWords() throws Exception {
    assertThat(desc(drawOnePage(Example.SITE)))
        .contains(
            "Propagation: head unit, address 1, A B G landed, terminator 120 ohm, bias 510 ohm"
                + " each, the common to earth here, weather station with light, temperature.",
            "Then cable to Seedling North, 40 m.",
            "Hardening Bay: follower, address 3, A B landed, terminator 120 ohm.");
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 30, 255})
  void everyPageIsWellFormedAndToldApart(int units) throws Exception {
    List<String> pages = draw(DrawnSite.of(RandomSite.text(units, new Random(units))));
    Set<String> ids = new HashSet<>();
    for (String page : pages) {
      Element svg = read(page);
      assertThat(svg.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
      assertThat(svg.getAttribute("role")).isEqualTo("img");
      for (String id : svg.getAttribute("aria-labelledby").split(" ", -1)) {
        assertThat(id).startsWith("drawing-");
        assertThat(ids.add(id)).as(id).isTrue();
        assertThat(page).contains("id=\"" + id + "\"");
      }
      assertThat(page.split(" id=\"", -1)).hasSize(3);
    }
  }

  private static final Pattern COLOUR =
      Pattern.compile(
          "(?:fill|stroke|color)=\"|(?:fill|stroke)(?:=|:)\\s*#", Pattern.CASE_INSENSITIVE);

  /** Outside of the style sheet no colour is set, and there every colour can be set anew. */
  @Test
  void noColourIsFixed() {
    String svg = drawOnePage(Example.with("address: 3", "address: 2"));
    assertThat(COLOUR.matcher(svg).find()).isFalse();
    assertThat(svg).contains("var(--drawing-ink,", "var(--drawing-paper,", "@media print");
  }

  @Test
  void hostileNamesStayText() throws Exception {
    for (String name : RandomSite.HOSTILE_NAMES) {
      String quoted = "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
      String site = Example.SITE.replace("Seedling North", quoted.replace("\u202E", "\\u202E"));
      Element svg = read(draw(DrawnSite.of(site)).get(0));
      assertThat(svg.getElementsByTagName("script").getLength()).isZero();
      assertThat(svg.getTextContent()).doesNotContain("\u202E", "\u2066");
      String plain = Lettering.visible(name.strip());
      assertThat(svg.getTextContent()).as("the whole name, cut or not").contains(plain);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "de-DE"})
  void theSameEverywhere(String tag) {
    DrawnSite drawn = DrawnSite.of(RandomSite.text(40, new Random(40)));
    List<String> expected = draw(drawn);
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(draw(drawn)).isEqualTo(expected);
    } finally {
      Locale.setDefault(usual);
    }
  }

  /** What is there of a file in which little is understood. */
  @ParameterizedTest
  @ValueSource(
      strings = {"format: 1", "[]", "chain: [{}, {}]", "chain: [{unit: A}, {repeater: B}]"})
  void aSiteWithHardlyAnythingIsDrawn(String text) throws Exception {
    assertThat(read(drawOnePage(text)).getElementsByTagName("desc").getLength()).isOne();
  }
}
