package org.headhouse.linter;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/** A program of its own, which {@link SmallHeapTest} starts with little memory. */
final class SmallHeap {
  private SmallHeap() {}

  /**
   * Checks the files of a folder, or a stream of sites, writes reports, prints what was found; or
   * makes the sheets of a stream of sites.
   */
  public static void main(String[] arguments) throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(2).build();
    if (arguments[0].equals("sheets")) {
      sheets(linter, Integer.parseInt(arguments[1]));
      return;
    }
    CheckReport report =
        arguments[0].equals("stream")
            ? linter.check(sites(Integer.parseInt(arguments[1])))
            : linter.checkFiles(files(Path.of(arguments[0])));
    CountedBytes sarif = new CountedBytes();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), sarif);
    new JUnitReport(Level.ERROR)
        .write(report.results(), report.notifications(), OutputStream.nullOutputStream());
    System.out.println(report.files() + " files");
    System.out.println((sarif.written >> 20) + " MB of SARIF");
    report.results().stream().map(SmallHeap::line).distinct().forEach(System.out::println);
    report.notifications().stream().map(Notification::text).forEach(System.out::println);
  }

  private static final class CountedBytes extends OutputStream {
    private long written;

    @Override
    public void write(int one) {
      written++;
    }

    @Override
    public void write(byte[] some, int from, int length) {
      written += length;
    }
  }

  private static void sheets(SiteLinter linter, int number) {
    LongAdder bytes = new LongAdder();
    SheetReport report =
        linter.sheets(
            sites(number), Measure.METRIC, Paper.A4, sheet -> bytes.add(sheet.html().length));
    System.out.println(report.sites() + " sites");
    System.out.println((bytes.sum() >> 20) + " MB of sheets");
  }

  private static String line(Result result) {
    String file = result.location().file();
    return file.substring(file.lastIndexOf('/') + 1) + " " + result.rule();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().collect(Collectors.toList());
    }
  }

  /** Sites of 100 KB with a fault each, so that each leaves a result behind. */
  private static Stream<SiteInput> sites(int number) {
    String text = Example.with("address: 3", "address: 4") + "# filling\n".repeat(10_000);
    return IntStream.range(0, number)
        .mapToObj(
            i ->
                SiteInput.text(
                    "site-" + i + "/example.yaml", text.replace("site: example", "site: s" + i)));
  }
}
