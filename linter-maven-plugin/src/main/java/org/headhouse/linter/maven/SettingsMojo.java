package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Path;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.run.SettingsRequest;
import org.jspecify.annotations.Nullable;

/** A goal that uses what holds for the sites of a repository. */
abstract class SettingsMojo extends LinterMojo {
  /** The folder of the sites, or one file. */
  @Parameter(property = "linter.sites", defaultValue = "${basedir}/sites")
  private File sites = new File("sites");

  /** The policy; by default linter.yaml beside the folder of sites, if there is one. */
  @Parameter(property = "linter.policy")
  private @Nullable File policy;

  /** The device types; by default device-types.yaml beside the folder of sites, if there is one. */
  @Parameter(property = "linter.deviceTypes")
  private @Nullable File deviceTypes;

  /** Whether to do nothing. */
  @Parameter(property = "linter.skip", defaultValue = "false")
  private boolean skip;

  /** The folder that paths are shown from. */
  @Parameter(defaultValue = "${basedir}", readonly = true)
  private File basedir = new File("");

  @Override
  final boolean isSkipped() {
    return skip;
  }

  final SettingsRequest settingsRequest() {
    return new SettingsRequest(
        sites.toPath(), path(policy), path(deviceTypes), folder().base(), PluginParameters.NAMES);
  }

  /** The folder of the build. */
  final BuildFolder folder() {
    return BuildFolder.of(basedir);
  }

  static @Nullable Path path(@Nullable File file) {
    return file == null ? null : file.toPath();
  }
}
