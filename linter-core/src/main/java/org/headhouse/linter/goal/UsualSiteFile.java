package org.headhouse.linter.goal;

import java.nio.file.Files;
import java.nio.file.Path;

/** Where the file of a site is if nobody says otherwise. */
final class UsualSiteFile {
  private UsualSiteFile() {}

  /** A site is a file, or has a folder of its own. */
  static Path of(Path sites, String site) {
    Path inFolder = sites.resolve(site).resolve("site.yaml");
    return Files.exists(inFolder) ? inFolder : sites.resolve(site + ".yaml");
  }
}
