package org.headhouse.linter.files;

import java.nio.file.Path;
import java.util.List;

/**
 * What a run over sites works on.
 *
 * @param sites the folder, or one file
 * @param names which files of a folder are sites
 * @param files the sites
 * @param settings the files that hold for all sites
 */
public record FoundSites(
    Path sites, SiteNames names, List<FoundFile> files, SettingsFiles settings) {
  public FoundSites {
    files = List.copyOf(files);
  }

  /** The folder that settings lie in. */
  public Path home() {
    return settings.home(sites);
  }
}
