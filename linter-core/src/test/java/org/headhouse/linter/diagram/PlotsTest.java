package org.headhouse.linter.diagram;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.headhouse.linter.Example;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.diagram.LineProfile.Value;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.Traffic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PlotsTest {

  private static LineFigures figures(Object text) {
    return new LineFigures(DrawnSite.of(text).site(), SitePolicy.DEFAULT);
  }

  private static Element plot(Object text, Measure measure) throws Exception {
    return WiringDiagramTest.read(
        Plots.alongTheLine(figures(text), SitePolicy.DEFAULT, measure, PageFormat.A4, "p")
            .orElseThrow());
  }

  private static List<String> texts(Element svg, String element) {
    NodeList texts = svg.getElementsByTagName(element);
    return IntStream.range(0, texts.getLength())
        .mapToObj(i -> texts.item(i).getTextContent())
        .toList();
  }

  /**
   * Two units, 1000 m of 24 AWG, one terminator at the far end, whole unit loads left out of the
   * sum: 1.5 V · 120/(120 + 168.43) = 624 mV (computed); the loads of 24 kΩ take less than 1 %.
   */
  @Test
  void theReceivedVoltageIsThatOfTheWeakestSender() {
    SiteText text = new SiteText().unit("none", "1000 m").unit("120 ohm", "");
    LineProfile profile = LineProfile.of(figures(text));
    assertThat(profile.received()).hasSize(1);
    Value far = profile.received().get(0).get(1);
    assertThat(far.name()).isEqualTo("Bay 2");
    assertThat(far.metres()).isEqualTo(1000);
    assertThat(far.volts()).isCloseTo(0.624, within(0.006));
    assertThat(profile.idle()).isEmpty();
    assertThat(profile.complete()).isTrue();
  }

  /** Each segment begins anew, where the one before it ends. */
  @Test
  void distancesRunOnBehindARepeater() {
    SiteText text =
        new SiteText()
            .bias("Head House", "560 ohm", "5 V")
            .unit("120 ohm", "100 m")
            .unit("none", "50 m")
            .repeater("Road", "120 ohm", "20 m")
            .unit("none", "30 m")
            .unit("120 ohm", "");
    LineProfile profile = LineProfile.of(figures(text));
    assertThat(profile.received())
        .extracting(values -> values.stream().map(Value::metres).toList())
        .containsExactly(List.of(0.0, 100.0, 150.0), List.of(150.0, 170.0, 200.0));
    assertThat(profile.repeaters()).extracting(Value::metres).containsExactly(150.0);
    assertThat(profile.idle()).as("only the first segment has bias").hasSize(1);
    assertThat(profile.idle().get(0))
        .as("a repeater is a receiver as well (MODBUS over Serial Line V1.02, 3.4.1)")
        .extracting(Value::name)
        .containsExactly("Head House", "Bay 2", "Road");
    assertThat(profile.lengthMetres()).isEqualTo(200);
  }

  @Test
  void everyUnitHasItsValueInWords() throws Exception {
    SiteText text =
        new SiteText()
            .bias("Head House", "560 ohm", "5 V")
            .unit("120 ohm", "100 m")
            .unit("120 ohm", "");
    Element svg = plot(text, Measure.US);
    assertThat(texts(svg, "title"))
        .anyMatch(title -> title.matches("Head House, at 0.00 ft: 2\\d\\d mV"))
        .anyMatch(title -> title.matches("Bay 2, at 328.1 ft: 1\\d{3} mV"));
    assertThat(texts(svg, "text"))
        .contains("200 mV needed")
        .contains("ft from the start of the line");
    assertThat(texts(svg, "desc").get(0)).contains("lowest", "at Bay 2");
  }

  @Test
  void withoutALengthThereIsNothingToPlot() {
    LineFigures figures = figures(Example.SITE.replace("    cable-to-next: 40 m\n", ""));
    assertThat(Plots.alongTheLine(figures, SitePolicy.DEFAULT, Measure.METRIC, PageFormat.A4, "p"))
        .isEmpty();
  }

  @Test
  void aLineThatIsKnownInPartSaysSo() throws Exception {
    SiteText text =
        new SiteText()
            .unit("120 ohm", "100 m")
            .unit("none", "50 m")
            .repeater("Road", "120 ohm", "20 m")
            .unit("none", "")
            .unit("120 ohm", "");
    assertThat(texts(plot(text, Measure.METRIC), "text"))
        .contains("A part of the line is not computed: a length or a value is not known.");
  }

  /** Computed by hand: 14 registers make 37 bytes of 1.1458 ms, 4.01 ms of silence and 100 ms. */
  @Test
  void theBarTellsHowTheTimeIsSpent() throws Exception {
    SiteText text =
        new SiteText()
            .broadcast(14, "1 s")
            .unit("120 ohm", "10 m")
            .unit("120 ohm", "")
            .polls("serial", "every: 2 s, registers: 10");
    Element svg = bar(text);
    assertThat(texts(svg, "text"))
        .contains("broadcast 14.6 %", "146 ms in every 1.0 s")
        .contains("polls 6.6 %", "2 times 66 ms in every 2.0 s")
        .contains("free 78.8 %");
    assertThat(texts(svg, "desc").get(0)).contains("broadcast 14.6 %", "free 78.8 %");
  }

  @Test
  void moreThanAllTheTimeIsTold() throws Exception {
    SiteText text =
        new SiteText().broadcast(14, "100 ms").unit("120 ohm", "10 m").unit("120 ohm", "");
    assertThat(texts(bar(text), "text"))
        .contains("The traffic needs 146.4 % of the time: it does not fit.")
        .noneMatch(line -> line.startsWith("free"));
  }

  /** No text runs into another, whatever the line. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 7, 31, 120, 255})
  void nothingOverlaps(int units) {
    RandomCases.each(
        20,
        random -> {
          String text = RandomSite.text(units, random).replace("nonsense", "none");
          LineProfile profile = LineProfile.of(figures(text));
          Measure measure = random.nextBoolean() ? Measure.METRIC : Measure.US;
          LinePlot plot = new LinePlot(profile, SitePolicy.DEFAULT, measure, PageFormat.A4.width());
          if (!plot.isEmpty()) {
            LayoutTest.everythingLiesOnThePage(plot.page());
            LayoutTest.nothingOverlaps(words(plot.page()));
          }
        });
  }

  @ParameterizedTest
  @CsvSource({"14, 1 s", "14, 100 ms", "1, 60 min", "1000, 5 s"})
  void nothingOverlapsInTheBar(int registers, String every) {
    SiteText text =
        new SiteText()
            .broadcast(registers, every)
            .units(50, "1 m")
            .unit("none", "")
            .polls("serial", "every: 10 s, registers: 100");
    Traffic traffic = requireNonNull(figures(text).traffic());
    Strip page = new TimeBar(traffic).page(PageFormat.LETTER.width());
    LayoutTest.everythingLiesOnThePage(page);
    LayoutTest.nothingOverlaps(page);
  }

  private static Strip words(Strip page) {
    List<Part> words = page.parts().stream().filter(Part.TextPart.class::isInstance).toList();
    return new Strip(page.width(), page.height(), words, List.of());
  }

  @Test
  void aLineOfNoLengthIsPlotted() throws Exception {
    SiteText text = new SiteText().unit("120 ohm", "0 m").unit("120 ohm", "");
    assertThat(texts(plot(text, Measure.METRIC), "text")).contains("0.5", "1");
  }

  private static Element bar(Object text) throws Exception {
    Traffic traffic = requireNonNull(figures(text).traffic());
    return WiringDiagramTest.read(Plots.useOfTime(traffic, PageFormat.LETTER, "t"));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 806, 12, 100, 9",
    "0, 1500, 5, 500, 3",
    "0, 285, 5, 100, 3",
    "-40, 285, 5, 100, 4",
    "0, 0.07, 12, 0.01, 7"
  })
  void scalesHaveRoundSteps(double least, double greatest, int most, double step, int steps) {
    Scale scale = Scale.over(least, greatest, most, 100, 200);
    assertThat(scale.step()).isCloseTo(step, within(step * 1e-6));
    assertThat(scale.steps()).isEqualTo(steps);
    assertThat(scale.at(scale.ticks().get(0))).isEqualTo(100);
    assertThat(scale.at(scale.ticks().get(steps))).isCloseTo(200, within(1e-9));
    assertThat(scale.at(least)).isBetween(100 - 1e-9, 200 + 1e-9);
    assertThat(scale.at(greatest)).isBetween(100 - 1e-9, 200 + 1e-9);
  }
}
