package org.headhouse.linter.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.Written;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.Traffic;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drawings that were looked at, as they were then, of sites that nothing else uses. Whoever writes
 * them anew looks at them again.
 */
@Tag("written")
class GoldenDrawingsTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "drawings");

  @ParameterizedTest
  @CsvSource({
    "ottermarsh, US, LETTER",
    "tarnwick, METRIC, A4",
    "dunmere, METRIC, A4",
    "cable, METRIC, A4"
  })
  void drawingsAreAsTheyWere(String name, Measure measure, PageFormat format) throws IOException {
    DrawnSite drawn = DrawnSite.of(FOLDER.resolve("sites"), name + ".yaml");
    List<String> pages =
        new WiringDiagram(drawn.site(), drawn.results(), measure)
            .svg(format, Detail.DRAWN, "wiring");
    for (int i = 0; i < pages.size(); i++) {
      compare(name + "-" + (i + 1), pages.get(i));
    }
    Path onePageMore = FOLDER.resolve(name + "-" + (pages.size() + 1) + ".svg");
    if (Written.anew()) {
      Files.deleteIfExists(onePageMore);
    }
    assertThat(onePageMore).doesNotExist();
    LineFigures figures = new LineFigures(drawn.site(), SitePolicy.DEFAULT);
    compare(
        name + "-voltages",
        Plots.alongTheLine(figures, SitePolicy.DEFAULT, measure, format, "voltages").orElse(""));
    Traffic traffic = figures.traffic();
    if (traffic != null) {
      compare(name + "-time", Plots.useOfTime(traffic, format, "time"));
    }
  }

  private static void compare(String name, String svg) throws IOException {
    Written.compare(FOLDER.resolve(name + ".svg"), svg);
  }
}
