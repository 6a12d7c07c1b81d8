package org.headhouse.linter.maven;

import java.io.File;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.SitesRequest;
import org.headhouse.linter.run.SlackParameter;
import org.jspecify.annotations.Nullable;

/**
 * Reports what differs between two states of the sites, the order of the field work that leads from
 * one to the other, and the materials for it. Writes changes.md and changes.json. Fails and gives
 * no order while the policy or the device types have an error.
 */
@Mojo(name = "changes", requiresProject = false, threadSafe = true)
public final class ChangesMojo extends SitesMojo {
  /** The revision of the git repository to compare with. */
  @Parameter(property = "linter.since")
  private @Nullable String since;

  /** The folder of sites to compare with, or one file; in place of linter.since. */
  @Parameter(property = "linter.before")
  private @Nullable File before;

  /**
   * The extra cable to order, in percent of the measured lengths (the default is common practice,
   * no source).
   */
  @Parameter(property = "linter.slack", defaultValue = "10")
  private String slack = "10";

  @Override
  ChangesRequest request() throws UserError {
    SitesRequest sites = sitesRequest();
    if ((since == null) == (before == null)) {
      throw new UserError(
          (since == null
                  ? "there is nothing to compare with"
                  : "linter.since and linter.before cannot be combined")
              + ": use -Dlinter.since=HEAD, or -Dlinter.before with a folder of sites or one file");
    }
    if (before != null && !before.exists()) {
      throw new UserError(
          "linter.before names " + before + ", which does not exist: correct the path");
    }
    return new ChangesRequest(
        sites, output(), since, path(before), SlackParameter.of("linter.slack", slack));
  }
}
