package org.headhouse.linter.run;

import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.SiteLinter;

/** A program of its own, which {@link CleanSitesJarTest} starts from a jar. */
final class CleanSitesRun {
  private CleanSitesRun() {}

  /** Checks a file, knowing what the last run left in a folder, and prints what it can tell. */
  public static void main(String[] arguments) throws Exception {
    CleanSitesFile clean = CleanSitesFile.in(Path.of(arguments[0]));
    if (clean == null) {
      System.out.println("nothing is kept");
      return;
    }
    SiteLinter.builder().cleanFiles(clean::open).build().checkFiles(List.of(Path.of(arguments[1])));
    clean.save();
    System.out.println("kept");
  }
}
