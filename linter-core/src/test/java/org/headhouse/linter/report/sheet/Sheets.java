package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetFile;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.result.Notification;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/**
 * Sheets as tests look at them.
 *
 * @param files the content of each file by its name, the index included
 */
public record Sheets(Map<String, String> files, List<Notification> notifications) {
  public static final Path SAMPLES = Path.of("../sample-sites");
  public static final Path SAMPLE_TYPES = SAMPLES.resolve("device-types.yaml");
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

  /** The sheets of one text, with the device types of the samples. */
  public static Document page(String text) {
    return Jsoup.parse(html(text));
  }

  /** The page of one text. */
  public static String html(String text) {
    Sheets sheets = of(Stream.of(SiteInput.text("example.yaml", text)), Measure.METRIC, Paper.A4);
    return sheets.files().values().iterator().next();
  }

  /** The page with the materials and labels of one text. */
  public static String materials(String text, Paper paper) {
    Sheets sheets = of(Stream.of(SiteInput.text("example.yaml", text)), Measure.METRIC, paper);
    return sheets.file("example-materials.html");
  }

  /** The page of one text for a line that does not work. */
  public static String faults(String text, Paper paper) {
    Sheets sheets = of(Stream.of(SiteInput.text("example.yaml", text)), Measure.METRIC, paper);
    return sheets.file("example-faults.html");
  }

  /** The sheets of the good samples. */
  public static Sheets ofSamples() {
    return of(inputs(SAMPLES.resolve("sites")), Measure.METRIC, Paper.A4);
  }

  /** The sheets of the faulty samples. */
  public static Sheets ofFaultySamples() {
    return of(inputs(SAMPLES.resolve("faulty/sites")), Measure.US, Paper.LETTER);
  }

  public static Sheets of(Stream<SiteInput> inputs, Measure measure, Paper paper) {
    return of(linter(1), inputs, measure, paper);
  }

  public static Sheets of(
      SiteLinter linter, Stream<SiteInput> inputs, Measure measure, Paper paper) {
    Map<String, String> files = new LinkedHashMap<>();
    SheetReport report =
        linter.sheets(
            inputs,
            measure,
            paper,
            sheet -> {
              files.put(sheet.page(), new String(sheet.html(), UTF_8));
              files.put(sheet.zonesFile(), new String(sheet.zones(), UTF_8));
              sheet.papers().forEach(one -> files.put(one.name(), text(one)));
            });
    report.papers().forEach(one -> files.put(one.name(), text(one)));
    files.put(SheetReport.PAGE, new String(report.html(), UTF_8));
    return new Sheets(files, report.notifications());
  }

  private static String text(SheetFile file) {
    return new String(file.content(), UTF_8);
  }

  public static SiteLinter linter(int threads) {
    try {
      return SiteLinter.builder().deviceTypes(SAMPLE_TYPES).clock(CLOCK).threads(threads).build();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  public static Stream<SiteInput> inputs(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted(Comparator.comparing(Path::toString))
          .map(SiteInput::file)
          .toList()
          .stream();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** All pages, parsed, by the names of their files. */
  public Map<String, Document> pages() {
    Map<String, Document> pages = new LinkedHashMap<>();
    files.forEach(
        (name, content) -> {
          if (name.endsWith(".html")) {
            pages.put(name, Jsoup.parse(content));
          }
        });
    return pages;
  }

  /** The content of one file. */
  public String file(String name) {
    return Objects.requireNonNull(files.get(name), name);
  }
}
