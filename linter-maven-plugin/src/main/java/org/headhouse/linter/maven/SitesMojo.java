package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.SitePaths;
import org.jspecify.annotations.Nullable;

/** A goal that reads the sites of a repository: what it reads, and where it writes. */
abstract class SitesMojo extends AbstractMojo {
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

  @Override
  public final void execute() throws MojoExecutionException, MojoFailureException {
    if (skip) {
      getLog().info("The goal is skipped by linter.skip.");
      return;
    }
    if (threads != null && threads < 1) {
      throw new MojoExecutionException("linter.threads cannot be " + threads + ": write 1 or more");
    }
    checkParameters();
    settings = settings(sites.toPath());
    SiteNames names = new SiteNames(includes, excludes);
    List<Path> files = files(sites.toPath(), names, settings);
    tell();
    FoundSites found = new FoundSites(sites.toPath(), names, files, settings);
    SiteLinter.Builder builder = builder(files.size());
    try {
      compare(builder, found);
      run(Linters.build(builder), inputs(files));
    } finally {
      close();
    }
  }

  /** Looks up what the goal compares with. */
  void compare(SiteLinter.Builder builder, FoundSites found) throws MojoExecutionException {
    // Most goals compare with nothing.
  }

  /** Lets go of what the goal compares with. */
  void close() {
    // There is nothing by default.
  }

  /** Looks at the parameters of the goal itself, before anything is read. */
  abstract void checkParameters() throws MojoExecutionException;

  /** By default a goal looks at all results, whatever was known before. */
  void useBaseline(SiteLinter.Builder builder) {
    builder.withoutBaseline();
  }

  /** Does the work of the goal. */
  abstract void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException;

  private void tell() {
    getLog()
        .info(
            (settings.deviceTypes() == null
                    ? "No device types"
                    : "Device types: " + shown(settings.deviceTypes()))
                + (settings.policy() == null
                    ? "; no policy"
                    : "; policy: " + shown(settings.policy())));
    settings.misnamed(sites.toPath()).forEach(getLog()::warn);
  }

  /** A file in the output directory. */
  final Path output(String name) {
    return BuildFolder.of(basedir).output(outputDirectory).resolve(name);
  }

  /** A path as it is shown. */
  final String shown(Path path) {
    return BuildFolder.of(basedir).shown(path);
  }

  /** A file that lies with the settings, in the folder of the policy if there is one. */
  final Path besideSites(String name) {
    return settings.home(sites.toPath()).resolve(name);
  }

  /** How files are called in results, and in a baseline. */
  final SitePaths pathsFrom(Path baseline) {
    return SitePaths.of(baseline, basedir.toPath());
  }

  /** The file of an input. */
  final Path file(String shown) {
    return BuildFolder.of(basedir).path().resolve(shown);
  }

  /** The files that hold for all sites of a folder. */
  final SettingsFiles settings(Path folder) throws MojoExecutionException {
    return SettingsFiles.find(folder, policy, deviceTypes);
  }

  /** The sites of a folder, or the one file that it is. */
  final List<Path> files(Path path, SiteNames names, SettingsFiles settings)
      throws MojoExecutionException {
    if (Files.isRegularFile(path)) {
      return List.of(path);
    }
    if (!Files.isDirectory(path)) {
      throw new MojoExecutionException(
          "linter.sites names "
              + path
              + ", which does not exist: write the folder of the sites, or one file");
    }
    List<Path> files = new SiteFiles(path, names, settings.all()).find();
    if (files.isEmpty() && !allowEmpty) {
      throw new MojoExecutionException(
          "no file in "
              + path
              + " matches "
              + String.join(", ", includes)
              + ": correct linter.sites or linter.includes, or set linter.allowEmpty to true");
    }
    return files;
  }

  private SiteLinter.Builder builder(int files) {
    int number = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
    // More threads than files would be started for nothing.
    SiteLinter.Builder builder = SiteLinter.builder().threads(Math.max(1, Math.min(number, files)));
    if (settings.policy() != null) {
      builder.policy(input(settings.policy()));
    }
    if (settings.deviceTypes() != null) {
      builder.deviceTypes(input(settings.deviceTypes()));
    }
    builder.shownFrom(basedir.toPath());
    useBaseline(builder);
    return builder;
  }

  /** Files as they are read and shown. */
  final List<SiteInput> inputs(List<Path> files) {
    return files.stream().map(this::input).toList();
  }

  final SiteInput input(Path file) {
    return SiteInput.file(file, shown(file));
  }
}
