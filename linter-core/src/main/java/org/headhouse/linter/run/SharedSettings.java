package org.headhouse.linter.run;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.source.FolderBoundary;
import org.jspecify.annotations.Nullable;

/**
 * What holds for all sites of a run.
 *
 * @param files where it is written
 * @param base what paths are shown from
 * @param own of which files lines may be shown
 */
public record SharedSettings(SettingsFiles files, BaseFolder base, FolderBoundary own) {

  /**
   * Reports which files hold for all sites, and which look as if they did.
   *
   * @param sites the folder of the sites, or one of them
   */
  public void report(Path sites, Console console) {
    console.report(
        Level.NOTE,
        (files.deviceTypes() == null
                ? "No device types"
                : "Device types: " + base.shown(files.deviceTypes()))
            + (files.policy() == null ? "; no policy" : "; policy: " + base.shown(files.policy())));
    files.misnamed(sites).forEach(line -> console.report(Level.WARNING, line));
  }

  /** A linter with what holds for all sites. */
  public SiteLinter.Builder builder() {
    SiteLinter.Builder builder = SiteLinter.builder().withoutLinesOf(file -> !mayShow(file));
    SiteInput policy = input(files.policy());
    if (policy != null) {
      builder.policy(policy);
    }
    SiteInput deviceTypes = deviceTypes();
    if (deviceTypes != null) {
      builder.deviceTypes(deviceTypes);
    }
    return builder;
  }

  /** Whether lines of a file may be shown: one outside may be a link that somebody sent in. */
  public boolean mayShow(String file) {
    try {
      return own.contains(base.path().resolve(file));
    } catch (InvalidPathException notOfThisLocale) {
      return false; // its name is shown with other letters, so nobody can tell where it leads
    }
  }

  /** The device types, or null where there are none. */
  public @Nullable SiteInput deviceTypes() {
    return input(files.deviceTypes());
  }

  private @Nullable SiteInput input(@Nullable Path file) {
    return file == null ? null : SiteInput.file(file, base.shown(file));
  }
}
