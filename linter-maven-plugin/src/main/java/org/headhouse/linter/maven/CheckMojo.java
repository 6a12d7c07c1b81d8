package org.headhouse.linter.maven;

import java.io.File;
import java.time.Instant;
import java.util.Date;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.CheckOutput;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * Checks the sites of a repository, and fails the build where a rule is broken. Writes
 * results.sarif and results-junit.xml.
 */
@Mojo(
    name = "check",
    defaultPhase = LifecyclePhase.VALIDATE,
    requiresProject = false,
    threadSafe = true)
public final class CheckMojo extends SitesMojo {
  /** The mildest level that fails the build: error, warning, note or none. */
  @Parameter(property = "linter.failLevel", defaultValue = "error")
  private String failLevel = "error";

  /** The mildest level that is printed: error, warning, note or none. */
  @Parameter(property = "linter.printLevel", defaultValue = "note")
  private String printLevel = "note";

  /**
   * The file with results that were there before, which fail nothing; by default the one that the
   * policy names, if it names one. The goal baseline writes it.
   */
  @Parameter(property = "linter.baseline")
  private @Nullable File baseline;

  /** A revision of the git repository with which rules on changes compare. */
  @Parameter(property = "linter.since")
  private @Nullable String since;

  /**
   * Whether to report only sites that differ from linter.since; all where device types, policy,
   * baseline, a pom.xml or a file in .mvn differ.
   */
  @Parameter(property = "linter.changedOnly", defaultValue = "false")
  private boolean changedOnly;

  /** Whether to check also the sites that were clean before and did not change. */
  @Parameter(property = "linter.recheck", defaultValue = "false")
  private boolean recheck;

  /** When the build began. */
  @Parameter(defaultValue = "${session.request.startTime}", readonly = true)
  private @Nullable Date buildStart;

  @Override
  CheckRequest request() throws UserError {
    SitesRequest sites = sitesRequest();
    CheckOutput results =
        new CheckOutput(
            level("linter.failLevel", failLevel), level("linter.printLevel", printLevel), output());
    if (changedOnly && since == null) {
      throw new UserError(
          "linter.changedOnly needs linter.since: write for example -Dlinter.since=origin/main");
    }
    return new CheckRequest(sites, results, path(baseline), since, changedOnly, recheck, start());
  }

  private @Nullable Instant start() {
    return buildStart == null ? null : buildStart.toInstant();
  }

  private static Level level(String parameter, String word) throws UserError {
    return EnumParameter.of(parameter, word, Level.values(), Level::word);
  }
}
