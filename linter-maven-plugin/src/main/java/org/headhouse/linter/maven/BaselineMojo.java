package org.headhouse.linter.maven;

import java.io.File;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * Writes the results that there are into a baseline, so that only new ones fail a check. A
 * suppression in the site's file is better for a single result, since it gives the reason. Nothing
 * is written while the policy or the device types have an error, or a file cannot be read.
 */
@Mojo(name = "baseline", requiresProject = false, threadSafe = true)
public final class BaselineMojo extends SitesMojo {
  /**
   * The file to write; by default the one that the policy names, else linter-baseline.jsonl beside
   * the policy or the folder of sites.
   */
  @Parameter(property = "linter.baseline")
  private @Nullable File baseline;

  @Override
  BaselineRequest request() throws UserError {
    return new BaselineRequest(sitesRequest(), path(baseline));
  }
}
