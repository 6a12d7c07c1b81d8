package org.headhouse.linter.maven;

import java.io.File;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.ChangesRequest;
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
  @Parameter(property = "linter.slack", defaultValue = SlackParameter.USUAL)
  private String slack = SlackParameter.USUAL;

  @Override
  ChangesRequest request() throws UserError {
    return ChangesRequest.of(sitesRequest(), output(), since, path(before), slack);
  }
}
