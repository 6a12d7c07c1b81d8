package org.headhouse.linter.goal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.BundleZip;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SiteBundle;
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
    sheet.files().forEach(one -> write(one.name(), out -> out.write(one.content())));
  }

  /** Writes what is over several sites. */
  void add(SheetReport report) {
    report.papers().forEach(one -> write(one.name(), out -> out.write(one.content())));
    write(SheetReport.PAGE, out -> out.write(report.html()));
    // From what was written: the sheets of many sites are never in memory together.
    for (SiteBundle bundle : report.bundles()) {
      write(bundle.file(), out -> BundleZip.write(bundle, this::read, out));
    }
  }

  /** Reports the file that could not be written, if there was one. */
  void failOnError() throws UserError {
    if (error != null) {
      throw error;
    }
  }

  private byte[] read(String name) throws IOException {
    return Files.readAllBytes(folder.resolve(name));
  }

  private void write(String name, AtomicFile.Writer content) {
    if (error == null) {
      try {
        AtomicFile.write(folder.resolve(name), content);
      } catch (UserError failure) {
        error = failure;
      }
    }
  }
}
