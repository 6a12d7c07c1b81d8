package org.headhouse.linter.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.figures.TransactionTimes;
import org.headhouse.linter.line.Traffic;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drawings that were looked at, as they were then.
 *
 * <p>With {@code -Dgolden=write} the test writes them instead of comparing them; look at them again
 * before they are kept.
 */
class GoldenDrawingsTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "drawings");

  @ParameterizedTest
  @CsvSource({
    "'', ottermarsh, US, LETTER",
    "'', tarnwick, METRIC, A4",
    "'', dunmere, METRIC, A4",
    "faulty, cable, METRIC, A4"
  })
  void drawingsAreAsTheyWere(String folder, String name, Measure measure, PageFormat format)
      throws IOException {
    DrawnSite drawn = DrawnSite.sample(folder, name + ".yaml");
    List<String> pages =
        WiringDiagram.svg(drawn.site(), drawn.results(), measure, format, "wiring");
    for (int i = 0; i < pages.size(); i++) {
      compare(name + "-" + (i + 1), pages.get(i));
    }
    assertThat(FOLDER.resolve(name + "-" + (pages.size() + 1) + ".svg")).doesNotExist();
    LineFigures figures = new LineFigures(drawn.site(), TransactionTimes.DEFAULT);
    compare(
        name + "-voltages",
        Plots.alongTheLine(figures, SitePolicy.DEFAULT, measure, format, "voltages").orElse(""));
    Traffic traffic = figures.traffic();
    if (traffic != null) {
      compare(name + "-time", Plots.useOfTime(traffic, format, "time"));
    }
  }

  private static void compare(String name, String svg) throws IOException {
    Path file = FOLDER.resolve(name + ".svg");
    if ("write".equals(System.getProperty("golden"))) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, svg);
    }
    assertThat(svg)
        .as(
            "%s is another drawing; if it is meant, write it with"
                + " mvn -pl linter-core test -Dtest=GoldenDrawingsTest -Dgolden=write",
            file)
        .isEqualTo(Files.readString(file));
  }
}
