package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.headhouse.linter.Example;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets in a real browser: on screen, printed, and for those who cannot see them. */
@Tag("browser")
class BrowserTest {
  private static final Sheets GOOD = Sheets.ofSamples();
  private static final Sheets FAULTY = Sheets.ofFaultySamples();
  private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

  private static final float LEAST_FILLED = 0.45f;

  @TempDir private Path folder;
  private Chromium browser;

  @BeforeEach
  void start() {
    browser = Chromium.in(folder);
  }

  private static String page(String name) {
    return switch (name) {
      case "good" -> GOOD.file("tarnwick.html");
      case "faulty" ->
          Sheets.html(
              Example.with("[A, B]", "[A]").replace("termination: none", "termination: 120 ohm"));
      case "hostile" -> Sheets.html(Hostile.site());
      case "too long" -> Sheets.html(Hostile.tooLong());
      case "certificate" -> GOOD.file("ottermarsh-certificate.html");
      case "not proved" -> FAULTY.file("record-partial-certificate.html");
      case "night card" -> GOOD.file("tarnwick-night-card.html");
      case "yearly" -> GOOD.file("ottermarsh-yearly.html");
      case "start" -> Papers.start(Paper.A4, Papers.PROVED, Papers.line(5));
      case "hostile start" -> Papers.start(Paper.A4, Hostile.site(), Hostile.site());
      case "materials" -> GOOD.file("tarnwick-materials.html");
      case "hostile materials" -> Sheets.materials(Hostile.site(), Paper.A4);
      case "faults" -> GOOD.file("tarnwick-faults.html");
      case "hostile faults" -> Sheets.faults(Hostile.site(), Paper.A4);
      case "index" -> FAULTY.file("index.html");
      default -> throw new IllegalArgumentException(name);
    };
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "good",
        "faulty",
        "hostile",
        "too long",
        "index",
        "certificate",
        "not proved",
        "night card",
        "yearly",
        "start",
        "hostile start",
        "materials",
        "hostile materials",
        "faults",
        "hostile faults"
      })
  void thePageOpensFromDiskWithoutAComplaint(String name) throws Exception {
    Chromium.Opened opened = browser.open(page(name));
    assertThat(opened.console()).isEmpty();
    assertThat(Jsoup.parse(opened.dom()).title()).isEqualTo(Jsoup.parse(page(name)).title());
  }

  /** So that it is known that complaints are seen. */
  @Test
  void aPageThatComplainsIsHeard() throws Exception {
    String wrong = page("index").replaceFirst("<body>", "<body><script>alert(1)</script>");
    assertThat(browser.open(wrong).console()).hasSize(1).first().asString().contains("Content");
  }

  /** WCAG 2.2, levels A and AA, and the good practice that axe-core knows. */
  @ParameterizedTest
  @CsvSource({
    "good, --lang=en",
    "faulty, --force-dark-mode",
    "hostile, --lang=en",
    "index, --lang=en",
    "certificate, --lang=en",
    "not proved, --force-dark-mode",
    "night card, --lang=en",
    "yearly, --lang=en",
    "start, --force-dark-mode",
    "hostile start, --lang=en",
    "materials, --force-dark-mode",
    "hostile materials, --lang=en"
  })
  void theAccessibilityCheckFindsNothing(String name, String option) throws Exception {
    assertThat(violations(page(name), option)).isEmpty();
  }

  @Test
  void theAccessibilityCheckLooks() throws Exception {
    String wrong =
        page("index").replace("--quiet: #4a525b", "--quiet: #cccccc").replace("<h2 ", "<h4 ");
    assertThat(violations(wrong, "--lang=en"))
        .anyMatch(text -> text.startsWith("color-contrast"))
        .anyMatch(text -> text.startsWith("heading-order"));
  }

  private List<String> violations(String html, String option) throws Exception {
    String script =
        axe()
            + ";axe.run(document, {resultTypes: ['violations']}).then(found => {"
            + "const told = document.createElement('output'); told.id = 'told';"
            + "told.textContent = JSON.stringify(found.violations.map(one => one.id + ': ' +"
            + " one.nodes.slice(0, 3).map(node => node.html).join(' ')));"
            + "document.body.append(told)});";
    Document dom = Jsoup.parse(browser.open(withScript(html, script), option).dom());
    List<String> violations = new ArrayList<>();
    for (JsonNode one : JsonText.read(dom.expectFirst("#told").text())) {
      violations.add(one.asText());
    }
    return violations;
  }

  private static String axe() throws IOException {
    try (InputStream in = BrowserTest.class.getResourceAsStream("/axe.min.js")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), UTF_8);
    }
  }

  /** The page lets no script in, so the policy goes for the time of the check. */
  private static String withScript(String html, String script) {
    return html.replaceFirst("<meta http-equiv[^>]*>", "")
        .replace("</body>", "<script>" + script.replace("</", "<\\/") + "</script></body>");
  }

  /** WCAG 2.2, 1.4.10: at a width of 320 CSS pixels only tables are wider than the page. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "good",
        "faulty",
        "hostile",
        "index",
        "certificate",
        "not proved",
        "night card",
        "yearly",
        "start",
        "hostile start",
        "materials",
        "hostile materials"
      })
  void aNarrowScreenShowsItAll(String name) throws Exception {
    String inner = JsonText.quoted(page(name)).replace("</", "<\\/");
    String outer =
        "<!DOCTYPE html><title>x</title><iframe id=f width=320 height=900></iframe><script>"
            + "const f = document.getElementById('f'); f.onload = () => {"
            + "const told = document.createElement('output'); told.id = 'told';"
            + "told.textContent = f.contentDocument.documentElement.scrollWidth;"
            + "document.body.append(told)}; f.srcdoc = "
            + inner
            + ";</script>";
    Document dom = Jsoup.parse(browser.open(outer).dom());
    assertThat(Integer.parseInt(dom.expectFirst("#told").text())).isBetween(250, 320);
  }

  /** ISO 216: A4 is 210 mm by 297 mm; ANSI/ASME Y14.1: Letter is 8.5 in by 11 in. */
  @ParameterizedTest
  @CsvSource({
    "3, A4, 210, 297, 4, 6",
    "3, LETTER, 215.9, 279.4, 4, 6",
    "60, A4, 210, 297, 20, 30",
    "60, LETTER, 215.9, 279.4, 20, 32",
    "247, LETTER, 215.9, 279.4, 60, 105"
  })
  void printedSheetsFitThePaper(
      int units, Paper paper, double width, double height, int leastPages, int mostPages)
      throws Exception {
    try (PDDocument pdf = browser.print(site(units, paper))) {
      int pages = pdf.getNumberOfPages();
      assertThat(pages).isBetween(leastPages, mostPages);
      List<String> texts = new ArrayList<>();
      for (int number = 1; number <= pages; number++) {
        PDPage page = pdf.getPage(number - 1);
        assertThat(page.getMediaBox().getWidth() / POINTS_PER_MILLIMETRE)
            .isCloseTo(width, within(0.5));
        assertThat(page.getMediaBox().getHeight() / POINTS_PER_MILLIMETRE)
            .isCloseTo(height, within(0.5));
        Printed printed = new Printed(number);
        String text = printed.getText(pdf);
        assertThat(printed.right).isLessThanOrEqualTo(page.getMediaBox().getWidth() - 30);
        assertThat(printed.left).isGreaterThanOrEqualTo(30);
        assertThat(text).contains("page " + number + " of " + pages);
        texts.add(text);
      }
      assertCards(texts, units);
      assertUncutTables(texts, units);
      assertFilled(pdf, texts);
      for (String part :
          List.of("4. Figures", "5. Proving on site", "6. Hand-over", "7. Set-up cards")) {
        assertThat(texts).filteredOn(text -> text.contains(part)).as(part).hasSize(1);
      }
    }
  }

  /** Each paper is one sheet of paper, whatever the size of the site. */
  @ParameterizedTest
  @CsvSource({"4, A4", "4, LETTER", "40, A4", "40, LETTER"})
  void papersAreOfOnePage(int units, Paper paper) throws Exception {
    Sheets sheets = Papers.of(Papers.YEARLY, paper, Papers.line(units));
    for (String name : List.of("certificate", "night-card", "yearly")) {
      try (PDDocument pdf = browser.print(sheets.file("proved-" + name + ".html"))) {
        Printed printed = new Printed(1);
        assertThat(printed.getText(pdf)).contains("Proved Nursery", "page 1 of 1");
        assertThat(pdf.getNumberOfPages()).as(name).isEqualTo(1);
        assertThat(printed.right).isLessThanOrEqualTo(pdf.getPage(0).getMediaBox().getWidth() - 30);
        assertThat(printed.left).isGreaterThanOrEqualTo(30);
      }
    }
  }

  /** The quick start, with as many lines as few customers have. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void aQuickStartIsOfOnePage(Paper paper) throws Exception {
    String[] lines = new String[10];
    Arrays.fill(lines, Papers.PROVED);
    try (PDDocument pdf = browser.print(Papers.start(paper, lines))) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      assertThat(new Printed(1).getText(pdf)).contains("Open.", "Print.", "Fill in.", "Send back.");
    }
  }

  /** Four units take four pages, and one of cards. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void aSmallSiteTakesFewPages(Paper paper) throws Exception {
    try (PDDocument pdf =
        browser.print(Papers.of(Papers.YEARLY, paper, Papers.PROVED).file("proved.html"))) {
      assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(5);
      assertThat(new Printed(pdf.getNumberOfPages()).getText(pdf)).contains("7. Set-up cards");
    }
  }

  /**
   * Twenty units hang in the van on one page, sixty on two, no name is cut, and no letters are
   * smaller than 7 pt (ISO 3098-1: at least 1.8 mm high; from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "4, A4, 1",
    "4, LETTER, 1",
    "20, A4, 1",
    "20, LETTER, 1",
    "60, A4, 2",
    "60, LETTER, 2"
  })
  void theVanSheetIsOfOnePageOrTwo(int units, Paper paper, int pages) throws Exception {
    try (PDDocument pdf =
        browser.print(
            Papers.of(Papers.YEARLY, paper, Papers.line(units)).file("proved-van.html"))) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(pages);
      StringBuilder text = new StringBuilder();
      for (int number = 1; number <= pages; number++) {
        Printed printed = new Printed(number);
        text.append(printed.getText(pdf));
        assertThat(printed.smallest).isGreaterThanOrEqualTo(6.95f);
        assertThat(printed.right)
            .isLessThanOrEqualTo(pdf.getPage(number - 1).getMediaBox().getWidth() - 30);
      }
      assertThat(text)
          .contains("Isolate a unit from its supply", "House " + units, "terminator")
          .doesNotContain("…");
    }
  }

  /**
   * No page is nearly empty but the last before the cards, and the last. A drawing of a page is not
   * divided, and its cautions come before it.
   */
  private static void assertFilled(PDDocument pdf, List<String> texts) throws IOException {
    for (int number = 1; number < texts.size(); number++) {
      if (!texts.get(number).startsWith("7. Set-up cards")) {
        Printed printed = new Printed(number);
        printed.getText(pdf);
        assertThat(printed.bottom)
            .as("page " + number)
            .isGreaterThan(pdf.getPage(number - 1).getMediaBox().getHeight() * LEAST_FILLED);
      }
    }
  }

  /** A small table is on one page; of a larger one no row stands alone. */
  private static void assertUncutTables(List<String> pages, int units) {
    for (String cell : List.of("unit, address", "0.7 ohm to 1.0 ohm", "close after")) {
      List<Integer> rows =
          pages.stream().map(page -> page.split(cell, -1).length - 1).filter(n -> n > 0).toList();
      if (units < 10) {
        assertThat(rows).as(cell).hasSize(1);
      }
      assertThat(rows).as(cell).allMatch(number -> number > 1);
    }
  }

  /** A card is on one page from its first line to its last. */
  private static void assertCards(List<String> pages, int units) {
    int cards = 0;
    for (String page : pages) {
      int begun = page.split("Name: ", -1).length - 1;
      int ended = page.split("Delivered(?!:)|wired to this unit", -1).length - 1;
      assertThat(ended).isEqualTo(begun);
      assertThat(begun).isLessThanOrEqualTo(8);
      cards += begun;
    }
    assertThat(cards).isEqualTo(units);
  }

  /** As wide as a line of a label, in letters that a name may have. */
  private static final String LONG_NAME =
      "Wintering House of Magnolias Mimosas and Mulberries ".repeat(3) + "end";

  /** Names are printed to their last letter, on as many lines as they need. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void labelsAreWholeAndTheirNamesUncut(Paper paper) throws Exception {
    SiteText text = new SiteText().unit("120 ohm", "5 m").units(40, "5 m").unit("120 ohm", "");
    String site = text.toString().replace("unit: Bay 7\n", "unit: " + LONG_NAME + "\n");
    assertThat(site).contains(LONG_NAME);
    Sheets sheets = Sheets.of(Stream.of(SiteInput.text("line.yaml", site)), Measure.METRIC, paper);
    String html =
        sheets.files().entrySet().stream()
            .filter(file -> file.getKey().endsWith("-materials.html"))
            .findFirst()
            .orElseThrow()
            .getValue();
    int cables = 0;
    int names = 0;
    try (PDDocument pdf = browser.print(html)) {
      for (int number = 1; number <= pdf.getNumberOfPages(); number++) {
        PDPage page = pdf.getPage(number - 1);
        Printed printed = new Printed(number);
        printed.setSortByPosition(false);
        String words = printed.getText(pdf).replaceAll("\\s+", " ");
        assertThat(printed.right).isLessThanOrEqualTo(page.getMediaBox().getWidth() - 30);
        assertThat(printed.left).isGreaterThanOrEqualTo(30);
        // Each label ends with its cable, and each name that is begun here is ended here.
        cables += words.split("Cable \\d+, 5 m", -1).length - 1;
        int begun = words.split("Wintering", -1).length - 1;
        int whole = words.split(LONG_NAME.strip(), -1).length - 1;
        assertThat(begun).isEqualTo(whole * 3);
        names += whole;
      }
    }
    // 41 cables with two ends each; two of them lead to the long name, and are labelled with it at
    // both ends; one label is for the unit itself.
    assertThat(cables).isEqualTo(2 * 41);
    assertThat(names).isEqualTo(2 * 2 + 1);
  }

  private static String site(int units, Paper paper) {
    String[] more = {"device-type: eight-way", "vents: roof", "on-stale-readings: close"};
    SiteText text = new SiteText().unit("120 ohm", "5 m", more);
    int half = units / 2;
    text.units(half - 1, "5 m", more);
    if (units > 30) {
      text.repeater("Boiler Room", "120 ohm", "5 m");
    }
    text.units(units - half - 1, "5 m", more).unit("120 ohm", "", more);
    Sheets sheets =
        Sheets.of(Stream.of(SiteInput.text("line.yaml", text.toString())), Measure.METRIC, paper);
    return sheets.files().values().iterator().next();
  }

  /** The text of one page, and how far it reaches to either side. */
  private static final class Printed extends PDFTextStripper {
    /** The margin with its number of the page. */
    private static final float FOOT = 36;

    private float left = Float.MAX_VALUE;
    private float right;
    private float bottom;
    private float smallest = Float.MAX_VALUE;

    Printed(int page) {
      setStartPage(page);
      setEndPage(page);
      setSortByPosition(true);
    }

    @Override
    protected void processTextPosition(TextPosition text) {
      left = Math.min(left, text.getX());
      right = Math.max(right, text.getX() + text.getWidth());
      smallest = Math.min(smallest, text.getFontSizeInPt());
      if (text.getY() < text.getPageHeight() - FOOT) {
        bottom = Math.max(bottom, text.getY());
      }
      super.processTextPosition(text);
    }
  }
}
