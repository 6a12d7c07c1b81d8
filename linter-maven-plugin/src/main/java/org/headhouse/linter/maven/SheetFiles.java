package org.headhouse.linter.maven;

import java.nio.file.Path;
import java.util.function.Function;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SiteSheet;
import org.jspecify.annotations.Nullable;

/** Writes sheets into the output directory, one site at a time; the first trouble ends it. */
final class SheetFiles {
  private final Function<String, Path> output;
  private @Nullable UserError trouble;

  SheetFiles(Function<String, Path> output) {
    this.output = output;
  }

  /** Writes the sheets of one site. */
  void add(SiteSheet sheet) {
    write(sheet.page(), sheet.html());
    write(sheet.zonesFile(), sheet.zones());
  }

  /** Writes the page over all sites. */
  void add(SheetReport report) {
    write(SheetReport.PAGE, report.html());
  }

  /** Tells of the first file that could not be written; none was written after it. */
  void failOnTrouble() throws UserError {
    if (trouble != null) {
      throw trouble;
    }
  }

  private void write(String name, byte[] content) {
    if (trouble == null) {
      try {
        AtomicFile.write(output.apply(name), out -> out.write(content));
      } catch (UserError failure) {
        trouble = failure;
      }
    }
  }
}
