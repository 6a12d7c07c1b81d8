package org.headhouse.linter.run;

import java.nio.file.Path;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.UserError;
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

  /** The same for sites in another place. */
  public SettingsRequest in(Path other) {
    return new SettingsRequest(other, policy, deviceTypes, base, called);
  }

  /**
   * Finds the files that hold for the sites.
   *
   * @throws UserError where a file that is named is none
   */
  public SharedSettings find() throws UserError {
    return new SharedSettings(SettingsFiles.find(sites, policy, deviceTypes, called), base);
  }
}
