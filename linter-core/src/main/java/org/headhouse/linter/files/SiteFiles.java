package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds the sites in a folder.
 *
 * <p>Everything that has the name of a site and is no folder is found, also what cannot be read,
 * such as a pipe or a link that leads nowhere: reading it fails with the reason. What is hidden by
 * a dot in front of its name is left out. A link is followed as long as it stays in the folder; a
 * file with several names is found once. A link that leads out is found and refused, so that no
 * repository can make others read, and print, files that are not its own.
 */
public final class SiteFiles {
  private final Path sites;
  private final SiteNames names;
  private final boolean allowEmpty;
  private final ParameterNames called;

  /**
   * @param sites the folder, or one file
   * @param names which files of a folder are sites
   * @param allowEmpty whether it is fine that a folder has none
   */
  public SiteFiles(Path sites, SiteNames names, boolean allowEmpty, ParameterNames called) {
    this.sites = sites;
    this.names = names;
    this.allowEmpty = allowEmpty;
    this.called = called;
  }

  /**
   * The files, in the order of their paths; the one file that is named, whatever it is called.
   *
   * @param others files that may lie in the folder and are no sites
   * @throws UserError where there is none, or where a folder cannot be read
   */
  public List<FoundFile> find(List<Path> others) throws UserError {
    return find(List.of(), others);
  }

  /**
   * All files, and of some that are asked for also those that are not there.
   *
   * @param asked paths that begin with the folder
   * @param others files that may lie in the folder and are no sites
   * @throws UserError where there is none, or where a folder cannot be read
   */
  public List<FoundFile> find(List<Path> asked, List<Path> others) throws UserError {
    return found(asked, others).files();
  }

  /**
   * What a run over the folder works on, with the files that are likely to be meant as sites.
   *
   * @param settings the files that hold for all sites
   * @throws UserError where there is none, or where a folder cannot be read
   */
  public FoundSites find(SettingsFiles settings) throws UserError {
    Found found = found(List.of(), settings.all());
    return new FoundSites(sites, names, found.files(), settings, found.overlooked());
  }

  private record Found(List<FoundFile> files, List<FoundSites.Overlooked> overlooked) {}

  private Found found(List<Path> asked, List<Path> others) throws UserError {
    if (isOneFile()) {
      return new Found(List.of(new FoundFile(sites)), List.of());
    }
    Found found = search(true, asked, others);
    List<FoundFile> files = found.files();
    if (files.isEmpty() && !allowEmpty) {
      throw new UserError(
          "no file in "
              + sites
              + " matches "
              + names
              + ": correct "
              + called.of("sites")
              + ", "
              + called.of("includes")
              + " or "
              + called.of("excludes")
              + ", or set "
              + called.of("allowEmpty")
              + " to true");
    }
    return found;
  }

  /**
   * Those of some files in the folder that are sites, in the order of their paths. One that is not
   * there is a site that cannot be read.
   *
   * @param asked paths that begin with the folder
   * @param others files that may lie in the folder and are no sites
   * @throws UserError where the folder cannot be read
   */
  public List<FoundFile> among(List<Path> asked, List<Path> others) throws UserError {
    return search(false, asked, others).files();
  }

  private boolean isOneFile() throws UserError {
    try {
      return !Files.readAttributes(sites, BasicFileAttributes.class).isDirectory();
    } catch (IOException unreadable) {
      if (Files.notExists(sites)) {
        throw new UserError(
            called.of("sites")
                + " names "
                + sites
                + ", which does not exist: name the folder of the sites, or one file",
            unreadable);
      }
      throw UserError.of("the folder of sites cannot be read", unreadable);
    }
  }

  private Found search(boolean all, List<Path> asked, List<Path> others) throws UserError {
    Set<Path> real = others.stream().map(RealPath::of).collect(Collectors.toUnmodifiableSet());
    try {
      SiteSearch search = new SiteSearch(sites, names, real);
      if (all) {
        search.all();
      }
      search.these(asked);
      return new Found(search.found(), search.overlooked());
    } catch (IOException unreadable) {
      throw UserError.of("the folder of sites cannot be read", unreadable);
    }
  }
}
