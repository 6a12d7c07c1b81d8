package org.headhouse.linter.report;

import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.headhouse.linter.markup.XmlText;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/**
 * Results in the XML form that Surefire writes for JUnit tests, which build servers read: a test
 * case for each rule that was broken in a file, failed where it reaches the failing level, and one
 * in error for each trouble of the tool itself.
 */
public final class JUnitReport {
  private final Level failLevel;

  /** A report in which results of a level and graver are failures. */
  public JUnitReport(Level failLevel) {
    this.failLevel = failLevel;
  }

  private record Case(String file, String rule) implements Comparable<Case> {
    @Override
    public int compareTo(Case other) {
      int byFile = file.compareTo(other.file);
      return byFile != 0 ? byFile : rule.compareTo(other.rule);
    }
  }

  /** Writes the report; the stream is left open. */
  public void write(List<Result> results, List<Notification> notifications, OutputStream out)
      throws XMLStreamException {
    List<Notification> troubles =
        notifications.stream().filter(one -> one.level() == Level.ERROR).toList();
    Map<Case, List<Result>> cases =
        results.stream()
            .filter(result -> !result.suppressed())
            .collect(
                Collectors.groupingBy(
                    result -> new Case(result.location().file(), result.rule()),
                    TreeMap::new,
                    Collectors.toList()));
    long failures = cases.values().stream().filter(this::fails).count();
    XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
    xml.writeStartDocument("UTF-8", "1.0");
    xml.writeCharacters("\n");
    xml.writeStartElement("testsuite");
    xml.writeAttribute("name", "site definitions");
    // A suite without a case is taken for a broken run by some servers.
    xml.writeAttribute("tests", String.valueOf(cases.size() + troubles.size() + 1));
    xml.writeAttribute("errors", String.valueOf(troubles.size()));
    xml.writeAttribute("skipped", "0");
    xml.writeAttribute("failures", String.valueOf(failures));
    xml.writeAttribute("time", "0");
    openCase(xml, "all sites", "checked");
    xml.writeEndElement();
    for (Map.Entry<Case, List<Result>> entry : cases.entrySet()) {
      testCase(xml, entry.getKey(), entry.getValue());
    }
    for (Notification trouble : troubles) {
      errorCase(xml, trouble);
    }
    xml.writeCharacters("\n");
    xml.writeEndElement();
    xml.writeCharacters("\n");
    xml.writeEndDocument();
    xml.flush();
  }

  private static void errorCase(XMLStreamWriter xml, Notification trouble)
      throws XMLStreamException {
    openCase(
        xml,
        trouble.file() == null ? "all sites" : trouble.file(),
        trouble.rule() == null ? "reading" : trouble.rule());
    xml.writeStartElement("error");
    xml.writeAttribute("message", XmlText.of(trouble.text()));
    xml.writeAttribute("type", "trouble");
    xml.writeEndElement();
    xml.writeEndElement();
  }

  private static String line(Result result) {
    return TextReport.headline(result) + (result.known() ? " (known from the baseline)" : "");
  }

  private boolean fails(List<Result> results) {
    return results.stream().anyMatch(this::fails);
  }

  /** What a baseline knows fails nothing. */
  private boolean fails(Result result) {
    return !result.known() && result.level().reaches(failLevel);
  }

  private static void openCase(XMLStreamWriter xml, String file, String name)
      throws XMLStreamException {
    xml.writeCharacters("\n  ");
    xml.writeStartElement("testcase");
    xml.writeAttribute("classname", XmlText.of(file));
    xml.writeAttribute("name", XmlText.of(name));
    xml.writeAttribute("time", "0");
  }

  private void testCase(XMLStreamWriter xml, Case id, List<Result> results)
      throws XMLStreamException {
    openCase(xml, id.file(), id.rule());
    String text = results.stream().map(JUnitReport::line).collect(Collectors.joining("\n"));
    Optional<Result> first = results.stream().filter(this::fails).findFirst();
    if (first.isPresent()) {
      xml.writeStartElement("failure");
      xml.writeAttribute("message", XmlText.of(first.get().message().text()));
      xml.writeAttribute("type", id.rule());
      xml.writeCharacters(XmlText.of(text));
      xml.writeEndElement();
    } else {
      xml.writeStartElement("system-out");
      xml.writeCharacters(XmlText.of(text));
      xml.writeEndElement();
    }
    xml.writeEndElement();
  }
}
