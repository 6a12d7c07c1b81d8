package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.result.Level;
import org.jspecify.annotations.Nullable;

/** Checks the sites of a repository, and fails the build where a rule is broken. */
@Mojo(
    name = "check",
    defaultPhase = LifecyclePhase.VALIDATE,
    requiresProject = false,
    threadSafe = true)
public final class CheckMojo extends AbstractMojo {
  /** The folder of the sites, or one file. */
  @Parameter(property = "linter.sites", defaultValue = "${basedir}/sites")
  private File sites = new File("sites");

  /** Which files of the folder are sites; files and folders with a dot in front never are. */
  @Parameter(property = "linter.includes", defaultValue = "**/*.yaml,**/*.yml")
  private List<String> includes = List.of();

  /** Which files of the folder are none. */
  @Parameter(property = "linter.excludes")
  private List<String> excludes = List.of();

  /** The policy; by default the file linter.yaml beside the folder of sites, where there is one. */
  @Parameter(property = "linter.policy")
  private @Nullable File policy;

  /**
   * The types of device; by default the file device-types.yaml beside the folder of sites, where
   * there is one.
   */
  @Parameter(property = "linter.deviceTypes")
  private @Nullable File deviceTypes;

  /** The mildest level that fails the build: error, warning, note or none. */
  @Parameter(property = "linter.failLevel", defaultValue = "error")
  private String failLevel = "error";

  /** The mildest level that is printed: error, warning, note or none. */
  @Parameter(property = "linter.printLevel", defaultValue = "note")
  private String printLevel = "note";

  /** Where results.sarif and results-junit.xml are written. */
  @Parameter(
      property = "linter.outputDirectory",
      defaultValue = "${project.build.directory}/linter")
  private File outputDirectory = new File("target/linter");

  /** How many files are checked at a time; by default the number of cores. */
  @Parameter(property = "linter.threads")
  private @Nullable Integer threads;

  /** Whether it is fine that there is no site at all. */
  @Parameter(property = "linter.allowEmpty", defaultValue = "false")
  private boolean allowEmpty;

  /** Whether to do nothing. */
  @Parameter(property = "linter.skip", defaultValue = "false")
  private boolean skip;

  /** The folder that paths are shown from. */
  @Parameter(defaultValue = "${basedir}", readonly = true)
  private File basedir = new File("");

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    if (skip) {
      getLog().info("The check of the sites is skipped.");
      return;
    }
    Level failing = Levels.of("linter.failLevel", failLevel);
    Level printed = Levels.of("linter.printLevel", printLevel);
    if (threads != null && threads < 1) {
      throw new MojoExecutionException("linter.threads cannot be " + threads + ": write 1 or more");
    }
    SettingsFiles settings = SettingsFiles.find(sites.toPath(), policy, deviceTypes);
    List<Path> files = files(settings);
    CheckReport report = check(files, settings);
    ConsoleReport console = new ConsoleReport(getLog(), printed);
    console.print(report);
    write(report, failing);
    console.failOn(report, failing);
  }

  private List<Path> files(SettingsFiles settings) throws MojoExecutionException {
    Path path = sites.toPath();
    if (Files.isRegularFile(path)) {
      return List.of(path);
    }
    if (!Files.isDirectory(path)) {
      throw new MojoExecutionException(
          "linter.sites names " + sites + ", which does not exist: write the folder of the sites");
    }
    List<Path> files = new SiteFiles(path, includes, excludes, settings.all()).find();
    if (files.isEmpty() && !allowEmpty) {
      throw new MojoExecutionException(
          "no file in "
              + sites
              + " matches "
              + String.join(", ", includes)
              + ": correct linter.sites or linter.includes, or set linter.allowEmpty to true");
    }
    return files;
  }

  private CheckReport check(List<Path> files, SettingsFiles settings)
      throws MojoExecutionException {
    int number = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
    // More threads than files would be started for nothing.
    SiteLinter.Builder builder =
        SiteLinter.builder().threads(Math.max(1, Math.min(number, files.size())));
    if (settings.policy() != null) {
      builder.policy(input(settings.policy()));
    }
    if (settings.deviceTypes() != null) {
      builder.deviceTypes(input(settings.deviceTypes()));
    }
    Stream<SiteInput> inputs = files.stream().map(this::input);
    return Linters.build(builder).check(inputs, new ProgressLog(getLog(), files.size()));
  }

  private SiteInput input(Path file) {
    return SiteInput.file(file, BuildFolder.of(basedir).shown(file));
  }

  private void write(CheckReport report, Level failing) throws MojoExecutionException {
    BuildFolder base = BuildFolder.of(basedir);
    Path folder = base.output(outputDirectory);
    AtomicFile.write(
        folder.resolve("results.sarif"),
        out ->
            new SarifReport(report.rules()).write(report.results(), report.notifications(), out));
    AtomicFile.write(
        folder.resolve("results-junit.xml"),
        out -> new JUnitReport(failing).write(report.results(), out));
    getLog().info("Results are in " + base.shown(folder));
  }
}
