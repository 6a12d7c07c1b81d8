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
 * @param overlooked files that are likely to be meant as sites and are not read
 */
public record FoundSites(
    Path sites,
    SiteNames names,
    List<FoundFile> files,
    SettingsFiles settings,
    List<Overlooked> overlooked) {
  public FoundSites {
    files = List.copyOf(files);
    overlooked = List.copyOf(overlooked);
  }

  /**
   * A file that is likely to be meant as a site.
   *
   * @param meant the name that it should have, from the folder of sites
   */
  public record Overlooked(Path path, String meant) {}

  /** What a run works on where nobody looked for more. */
  public FoundSites(Path sites, SiteNames names, List<FoundFile> files, SettingsFiles settings) {
    this(sites, names, files, settings, List.of());
  }

  /** The folder that settings lie in. */
  public Path home() {
    return settings.home(sites);
  }
}
