package org.headhouse.linter.goal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.BundleZip;
import org.headhouse.linter.report.SheetFile;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SiteBundle;
import org.headhouse.linter.report.SiteSheet;
import org.headhouse.linter.report.sheet.PageNames;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.RegularFile;
import org.headhouse.linter.visit.TouchedList;
import org.jspecify.annotations.Nullable;

/**
 * Writes sheets, one site at a time; after the first file that cannot be written, no other is. A
 * list that somebody has filled in on a visit is not replaced.
 */
final class SheetFiles {
  private final Path folder;
  private final Map<String, byte[]> notWritten = new TreeMap<>();
  private @Nullable UserError error;

  SheetFiles(Path folder) {
    this.folder = folder;
  }

  /** Writes the sheets of one site. */
  void add(SiteSheet sheet) {
    for (SheetFile one : sheet.files()) {
      if (PageNames.isVisit(one.name()) && isFilledIn(folder.resolve(one.name()))) {
        notWritten.put(one.name(), one.content());
      } else {
        write(one.name(), out -> out.write(one.content()));
      }
    }
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

  /** The lists that are filled in and stay as they are. */
  List<Path> filledIn() {
    return notWritten.keySet().stream().map(folder::resolve).toList();
  }

  private static boolean isFilledIn(Path file) {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = RegularFile.open(file)) {
      return TouchedList.mayBe(in.readNBytes(Limits.DEFAULT.bytes() + 1));
    } catch (IOException unreadable) {
      return true;
    }
  }

  /** Reports the file that could not be written, if there was one. */
  void failOnError() throws UserError {
    if (error != null) {
      throw error;
    }
  }

  private byte[] read(String name) throws IOException {
    byte[] content = notWritten.get(name);
    return content == null ? Files.readAllBytes(folder.resolve(name)) : content;
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
