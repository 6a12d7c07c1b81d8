package org.headhouse.linter.run;

import java.nio.file.Files;
import java.nio.file.Path;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.FolderBoundary;
import org.jspecify.annotations.Nullable;

/**
 * Which sites a user asks for, and what shall hold for them; nothing is looked for yet.
 *
 * @param sites the folder, or one file
 * @param policy or null for the one in its usual place, if there is one
 * @param deviceTypes or null for those in their usual place, if there are any
 * @param base what paths are shown from
 * @param called how users write parameters
 */
public record SettingsRequest(
    Path sites,
    @Nullable Path policy,
    @Nullable Path deviceTypes,
    BaseFolder base,
    ParameterNames called) {
  /** The folder that is checked where nobody names one. */
  private static final String USUAL_SITES = "sites";

  /** The same for sites in another place. */
  public SettingsRequest in(Path other) {
    return new SettingsRequest(other, policy, deviceTypes, base, called);
  }

  /**
   * The same for one file, which need not be there yet: it then belongs to the folder of sites
   * above it, or to the nearest folder that there is.
   */
  public SettingsRequest forFile(Path file) {
    if (Files.exists(file)) {
      return in(file);
    }
    for (Path folder = file.getParent(); folder != null; folder = folder.getParent()) {
      if (folder.endsWith(USUAL_SITES)) {
        return in(folder);
      }
    }
    Path folder = file.getParent();
    while (folder != null && !Files.isDirectory(folder)) {
      folder = folder.getParent();
    }
    return in(folder == null ? file : folder);
  }

  /**
   * Finds the files that hold for the sites.
   *
   * @throws UserError where a file that is named is none, or one that is not named is a link that
   *     leads out of the repository
   */
  public SharedSettings find() throws UserError {
    FolderBoundary own = SettingsFiles.boundary(sites);
    if (sites.equals(base.path().resolve(USUAL_SITES)) && !own.contains(sites)) {
      throw new UserError(
          base.shown(sites)
              + " is a link that leads out of the repository: put the folder in its place, or name"
              + " its target by "
              + called.of("sites"));
    }
    return new SharedSettings(SettingsFiles.find(sites, policy, deviceTypes, called), base, own);
  }
}
