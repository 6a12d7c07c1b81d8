package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.RepositoryPaths;
import org.headhouse.linter.report.RunDetails;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rules.RulePages;
import org.headhouse.linter.run.CheckOutput;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.OutputForm;
import org.headhouse.linter.run.OutputFormat;
import org.headhouse.linter.run.SettingsRequest;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * Checks the sites of a repository, and fails the build if a rule is broken. Writes results.sarif
 * and results-junit.xml.
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
   * The file with old results, which do not fail the build; by default the one that the policy
   * names, if any. The goal baseline writes it.
   */
  @Parameter(property = "linter.baseline")
  private @Nullable File baseline;

  /** The revision of the git repository that rules on changes compare with. */
  @Parameter(property = "linter.since")
  private @Nullable String since;

  /**
   * Whether to report only sites that differ from linter.since. All sites are reported if device
   * types, policy, baseline, a pom.xml or a file in .mvn differ.
   */
  @Parameter(property = "linter.changedOnly", defaultValue = "false")
  private boolean changedOnly;

  /** Whether to check again the sites that were clean before and did not change. */
  @Parameter(property = "linter.recheck", defaultValue = "false")
  private boolean recheck;

  /**
   * The format of the results, in addition to results.sarif and results-junit.xml: text, github
   * (annotations in the log), gitlab (results-gitlab.json, its code quality report) or json
   * (results.jsonl).
   */
  @Parameter(property = "linter.format", defaultValue = "text")
  private String format = "text";

  /**
   * Whether to write results-open.sarif too, without results that are accepted, known or gone, for
   * hosts that ignore suppressions and baseline.
   */
  @Parameter(property = "linter.openResults", defaultValue = "false")
  private boolean openResults;

  /** The id of this execution in the POM. */
  @Parameter(defaultValue = "${mojo.executionId}", readonly = true)
  private @Nullable String execution;

  /** The module, where no repository has it. */
  @Parameter(defaultValue = "${project.artifactId}", readonly = true)
  private String artifact = "";

  /** When the build began. */
  @Parameter(defaultValue = "${session.request.startTime}", readonly = true)
  private @Nullable Date buildStart;

  @Override
  CheckRequest request() throws UserError {
    SitesRequest sites = sitesRequest();
    OutputFormat form =
        EnumParameter.of("linter.format", format, OutputFormat.values(), OutputFormat::word);
    CheckOutput results =
        new CheckOutput(
            level("linter.failLevel", failLevel),
            level("linter.printLevel", printLevel),
            output(),
            new OutputForm(form, openResults, true),
            details(sites.settings()));
    if (changedOnly && since == null) {
      throw new UserError(
          "linter.changedOnly needs linter.since: use for example -Dlinter.since=origin/main");
    }
    return new CheckRequest(sites, results, path(baseline), since, changedOnly, recheck, own());
  }

  private OwnExecution own() {
    return new OwnExecution(start(), execution);
  }

  private RunDetails details(SettingsRequest settings) {
    Path base = settings.base().path();
    RepositoryPaths paths = RepositoryPaths.around(settings.sites(), base);
    Path root = paths.root();
    String module =
        root != null && base.startsWith(root)
            ? root.relativize(base).toString().replace(File.separatorChar, '/')
            : artifact;
    String name = execution == null ? "check" : execution;
    return new RunDetails(paths, RunDetails.id(module, name), RulePages::text);
  }

  private @Nullable Instant start() {
    return buildStart == null ? null : buildStart.toInstant();
  }

  private static Level level(String parameter, String word) throws UserError {
    return EnumParameter.of(parameter, word, Level.values(), Level::word);
  }
}
