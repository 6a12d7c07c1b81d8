package example.program;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/** What the README shows, and two reports that the library for JSON writes. */
public final class Program {
  private Program() {}

  public static void main(String[] arguments) throws IOException {
    // from here
    SiteLinter linter = SiteLinter.builder().deviceTypes(Path.of("device-types.yaml")).build();
    CheckReport report = linter.checkFiles(List.of(Path.of("sites/alder-brook.yaml")));
    for (Result result : report.at(Level.WARNING)) {
      System.out.println(TextReport.headline(result));
    }
    for (Notification failure : report.failures()) {
      System.out.println(TextReport.headline(failure));
    }
    System.out.println(report.passes(Level.ERROR) ? "passed" : "failed");
    // to here
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    try (OutputStream out = Files.newOutputStream(folder.resolve("results.sarif"))) {
      new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    }
    try (OutputStream out = Files.newOutputStream(folder.resolve("figures.json"));
        FiguresReport figures = new FiguresReport(out)) {
      linter.figures(SiteInput.in(Path.of("sites")).stream(), figures::add);
    }
  }
}
