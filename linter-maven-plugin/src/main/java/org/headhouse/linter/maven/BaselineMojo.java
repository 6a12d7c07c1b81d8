package org.headhouse.linter.maven;

import java.io.File;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * Writes the present results into a baseline, so that only new results fail a check. For a single
 * result, a suppression in the site's file is better, because it gives the reason. Nothing is
 * written while the policy or the device types have an error, or a file cannot be read.
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
