package org.headhouse.linter.run;

import java.nio.file.Path;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.result.Level;

/**
 * What holds for all sites of a run: it is told, and a linter gets it.
 *
 * @param files where it is written
 * @param base what paths are shown from
 */
public record SharedSettings(SettingsFiles files, BaseFolder base) {

  /**
   * Tells what holds for all sites, and what looks as if it did.
   *
   * @param sites the folder of the sites, or one of them
   */
  public void tell(Path sites, Console console) {
    console.tell(
        Level.NOTE,
        (files.deviceTypes() == null
                ? "No device types"
                : "Device types: " + base.shown(files.deviceTypes()))
            + (files.policy() == null ? "; no policy" : "; policy: " + base.shown(files.policy())));
    files.misnamed(sites).forEach(line -> console.tell(Level.WARNING, line));
  }

  /** A linter with what holds for all sites. */
  public SiteLinter.Builder builder() {
    SiteLinter.Builder builder = SiteLinter.builder();
    if (files.policy() != null) {
      builder.policy(input(files.policy()));
    }
    if (files.deviceTypes() != null) {
      builder.deviceTypes(input(files.deviceTypes()));
    }
    return builder;
  }

  private SiteInput input(Path file) {
    return SiteInput.file(file, base.shown(file));
  }
}
