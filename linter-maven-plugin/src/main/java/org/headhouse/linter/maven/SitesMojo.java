package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.SiteFiles;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.SiteRun;
import org.jspecify.annotations.Nullable;

/** A goal that reads the sites of a repository: what it reads, and where it writes. */
abstract class SitesMojo extends LinterMojo {
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

  /** Where the goal writes. */
  @Parameter(
      property = "linter.outputDirectory",
      defaultValue = "${project.build.directory}/linter")
  private File outputDirectory = new File("target/linter");

  /** How many files are worked on at a time; by default the number of cores. */
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

  private SettingsFiles settings = new SettingsFiles(null, null);
  private List<FoundFile> files = List.of();

  @Override
  final void work() throws MojoExecutionException, MojoFailureException, UserError {
    if (skip) {
      getLog().info("The goal is skipped by linter.skip.");
      return;
    }
    try {
      checkProperties();
      execute(SiteRun.threads(threads, PluginParameters::name));
    } finally {
      close();
    }
  }

  private void execute(int most) throws MojoExecutionException, MojoFailureException, UserError {
    checkParameters();
    settings = settings(sites.toPath());
    SiteNames names = new SiteNames(includes, excludes, PluginParameters::name);
    FoundSites found =
        new FoundSites(sites.toPath(), names, files(sites.toPath(), names, settings), settings);
    SiteRun siteRun = new SiteRun(found, BuildFolder.of(basedir).base());
    siteRun.tellSettings(console());
    SiteLinter.Builder builder = siteRun.builder(most);
    useEarlierResults(builder);
    compare(builder, found);
    files = found.files();
    run(PluginLinterFactory.build(builder), siteRun.inputs());
  }

  /** Looks up what the goal compares with. */
  void compare(SiteLinter.Builder builder, FoundSites found)
      throws MojoExecutionException, UserError {
    // Most goals compare with nothing.
  }

  /** Lets go of what the goal compares with. */
  void close() {
    // There is nothing by default.
  }

  /** Looks at the parameters of the goal itself, before anything is read. */
  abstract void checkParameters() throws MojoExecutionException, UserError;

  /** What earlier runs left; by default a goal looks at all results, whatever was known before. */
  void useEarlierResults(SiteLinter.Builder builder) {
    builder.withoutBaseline();
  }

  /** Does the work of the goal. */
  abstract void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException, UserError;

  /** The log of the build. */
  final Console console() {
    return new BuildConsole(getLog());
  }

  /** A file in the output directory. */
  final Path output(String name) {
    return BuildFolder.of(basedir).output(outputDirectory).resolve(name);
  }

  /** A path as it is shown. */
  final String shown(Path path) {
    return BuildFolder.of(basedir).shown(path);
  }

  /** Whether the goal looks at a folder of sites, and not at one of them. */
  final boolean isWholeFolder() {
    return sites.isDirectory();
  }

  /** A file that lies with the settings, in the folder of the policy if there is one. */
  final Path besideSites(String name) {
    return settings.home(sites.toPath()).resolve(name);
  }

  /** How files are called in results, and in a baseline. */
  final SitePaths pathsFrom(Path baseline) {
    return SitePaths.of(baseline, basedir.toPath());
  }

  /** The files of the inputs by their names, which alone may not lead there. */
  final Map<String, Path> files() {
    Map<String, Path> byName = new HashMap<>();
    files.forEach(file -> byName.put(shown(file.path()), file.path()));
    return byName;
  }

  /** The files that hold for all sites of a folder. */
  final SettingsFiles settings(Path folder) throws UserError {
    return SettingsFiles.find(folder, path(policy), path(deviceTypes), PluginParameters::name);
  }

  private static @Nullable Path path(@Nullable File file) {
    return file == null ? null : file.toPath();
  }

  /** The sites of a folder, or the one file that it is. */
  final List<FoundFile> files(Path path, SiteNames names, SettingsFiles others) throws UserError {
    return new SiteFiles(path, names, allowEmpty, PluginParameters::name).find(others.all());
  }

  /** Files as they are read and shown. */
  final List<SiteInput> inputs(List<FoundFile> files) {
    return SiteRun.inputs(files, BuildFolder.of(basedir).base());
  }

  final SiteInput input(Path file) {
    return SiteInput.file(file, shown(file));
  }
}
