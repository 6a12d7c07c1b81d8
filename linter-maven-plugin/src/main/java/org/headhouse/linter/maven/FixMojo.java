package org.headhouse.linter.maven;

import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.FixRequest;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.run.EnumParameter;
import org.jspecify.annotations.Nullable;

/**
 * Fixes what can be fixed in the sites of a repository, and shows the difference. Files are written
 * only if linter.write is set. Fails and fixes nothing while the policy or the device types have an
 * error.
 */
@Mojo(name = "fix", requiresProject = false, threadSafe = true)
public final class FixMojo extends SitesMojo {
  /**
   * Which fixes: safe for those that follow from the rules alone; proposed for those that need a
   * look too.
   */
  @Parameter(property = "linter.fixes", defaultValue = "safe")
  private String fixes = "safe";

  /** Whether to write the files; without it, the goal only shows what would change. */
  @Parameter(property = "linter.write", defaultValue = "false")
  private boolean write;

  /**
   * A revision of the git repository, by default the last commit if there is one. If the line was
   * in operation then or before, fixes that need work at its units are only proposed. If a unit was
   * renamed since, its old name is replaced everywhere.
   */
  @Parameter(property = "linter.since")
  private @Nullable String since;

  @Override
  FixRequest request() throws UserError {
    return new FixRequest(
        sitesRequest(),
        EnumParameter.of("linter.fixes", fixes, FixKind.values(), FixKind::word),
        since,
        write);
  }
}
