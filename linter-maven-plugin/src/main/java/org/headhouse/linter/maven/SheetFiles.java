package org.headhouse.linter.maven;

import java.nio.file.Path;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SiteSheet;
import org.jspecify.annotations.Nullable;

/** Writes sheets, one site at a time; after the first file that cannot be written, no other is. */
final class SheetFiles {
  private final Path folder;
  private @Nullable UserError error;

  SheetFiles(Path folder) {
    this.folder = folder;
  }

  /** Writes the sheets of one site. */
  void add(SiteSheet sheet) {
    write(sheet.page(), sheet.html());
    write(sheet.zonesFile(), sheet.zones());
    sheet.papers().forEach(one -> write(one.name(), one.content()));
  }

  /** Writes what is over several sites. */
  void add(SheetReport report) {
    report.papers().forEach(one -> write(one.name(), one.content()));
    write(SheetReport.PAGE, report.html());
  }

  /** Reports the file that could not be written, if there was one. */
  void failOnError() throws UserError {
    if (error != null) {
      throw error;
    }
  }

  private void write(String name, byte[] content) {
    if (error == null) {
      try {
        AtomicFile.write(folder.resolve(name), out -> out.write(content));
      } catch (UserError failure) {
        error = failure;
      }
    }
  }
}
