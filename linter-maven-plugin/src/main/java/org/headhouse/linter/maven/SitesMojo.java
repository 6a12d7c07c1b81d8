package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/** A goal that reads the sites of a repository. */
abstract class SitesMojo extends SettingsMojo {
  /** Which files of the folder are sites; names that begin with a dot never are. */
  @Parameter(property = "linter.includes", defaultValue = "**/*.yaml,**/*.yml")
  private List<String> includes = List.of();

  /** Which files of the folder are not sites. */
  @Parameter(property = "linter.excludes")
  private List<String> excludes = List.of();

  /** The folder that the goal writes to. */
  @Parameter(
      property = "linter.outputDirectory",
      defaultValue = "${project.build.directory}/linter")
  private File outputDirectory = new File("target/linter");

  /** How many files to work on at a time; by default the number of cores. */
  @Parameter(property = "linter.threads")
  private @Nullable Integer threads;

  /** Whether a run without any site is allowed. */
  @Parameter(property = "linter.allowEmpty", defaultValue = "false")
  private boolean allowEmpty;

  final SitesRequest sitesRequest() throws UserError {
    return new SitesRequest(
        settingsRequest(),
        includes,
        excludes,
        allowEmpty,
        SitesRequest.threads(threads, PluginParameters.NAMES));
  }

  /** The folder that the goal writes into. */
  final Path output() {
    return folder().output(outputDirectory);
  }
}
