package org.headhouse.linter.run;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.result.Level;

/**
 * A run over sites that were found.
 *
 * @param base what paths are shown from
 * @param threads how many files are worked on at a time, at most
 */
public record SiteRun(FoundSites found, BaseFolder base, int threads) {

  /** What holds for all of the sites. */
  public SharedSettings settings() {
    return new SharedSettings(found.settings(), base, SettingsFiles.boundary(found.sites()));
  }

  /**
   * Reports which files hold for all sites, and which are likely to be meant as such or as sites.
   */
  public void reportSettings(Console console) {
    settings().report(found.sites(), console);
    found
        .overlooked()
        .forEach(
            one ->
                console.report(
                    Level.WARNING,
                    base.shown(one.path())
                        + " is not read as a site: name it "
                        + one.meant()
                        + ", or exclude it"));
  }

  /** A linter with what holds for all sites; more threads than files would be idle. */
  public SiteLinter.Builder builder() {
    return settings()
        .builder()
        .threads(Math.max(1, Math.min(threads, found.files().size())))
        .shownFrom(base.path());
  }

  /** Checks the sites, and reports how far it is. */
  public CheckReport check(SiteLinter linter, Console console) {
    return linter.check(inputs(), new ProgressLines(console, found.files().size()));
  }

  /** The files as they are read and shown; reading one that was refused fails with the reason. */
  public Stream<SiteInput> inputs() {
    return found.files().stream().map(file -> SiteInput.found(file, base.shown(file.path())));
  }

  /** How the files are called in results. */
  public Set<String> names() {
    return found.files().stream()
        .map(file -> base.shown(file.path()))
        .collect(Collectors.toUnmodifiableSet());
  }
}
