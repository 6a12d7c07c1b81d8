package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;

/** Whatever a site holds, its reports are well-formed, and no result is lost on the way. */
final class ReportsProperty implements Property {
  private final SiteLinter linter;

  ReportsProperty() throws IOException {
    this.linter = CheckProperty.linter(1);
  }

  @Override
  public void tryWith(byte[] input) throws IOException {
    SiteInput site = new SiteInput("alder-brook.yaml", most -> input);
    CheckReport report = linter.check(Stream.of(site));
    sarif(report);
    junit(report);
    figures(site);
  }

  private static void sarif(CheckReport report) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    JsonNode results = JsonText.read(out.toString(UTF_8)).path("runs").path(0).path("results");
    Demand.that(results.size() == report.results().size(), "results are lost: %s", out);
    for (int i = 0; i < results.size(); i++) {
      String text = results.path(i).path("message").path("text").asText("");
      Demand.that(!text.isBlank(), "a result without a message: %s", results.path(i));
    }
  }

  private static void junit(CheckReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      new JUnitReport(Level.NOTE).write(report.results(), report.notifications(), out);
      XMLInputFactory factory = XMLInputFactory.newFactory();
      factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
      XMLStreamReader reader =
          factory.createXMLStreamReader(new ByteArrayInputStream(out.toByteArray()));
      while (reader.hasNext()) {
        reader.next();
      }
    } catch (XMLStreamException exception) {
      throw new AssertionError("no XML: " + out, exception);
    }
  }

  private void figures(SiteInput site) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<Notification> troubles;
    try (FiguresReport figures = new FiguresReport(out)) {
      troubles = linter.figures(Stream.of(site), figures::add);
    }
    Demand.that(
        troubles.stream().allMatch(one -> one.level() == Level.WARNING), "trouble: %s", troubles);
    JsonNode sites = JsonText.read(out.toString(UTF_8)).path("sites");
    Demand.that(sites.size() + troubles.size() == 1, "figures are lost: %s", out);
  }
}
