package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.ChangeJson;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.ConsoleReport;
import org.jspecify.annotations.Nullable;

/**
 * Tells what differs between two states of the sites, and the order of the field work that leads
 * from one to the other. Writes changes.md and changes.json. Fails and tells no order while the
 * policy or the device types have an error.
 */
@Mojo(name = "changes", requiresProject = false, threadSafe = true)
public final class ChangesMojo extends SitesMojo {
  /** The revision of the git repository to compare with. */
  @Parameter(property = "linter.since")
  private @Nullable String since;

  /** The folder of sites to compare with, or one file; in place of linter.since. */
  @Parameter(property = "linter.before")
  private @Nullable File before;

  private @Nullable Revision revision;
  private @Nullable SiteState earlier;
  private @Nullable Path earlierTypes;
  private @Nullable FoundSites found;

  @Override
  void checkParameters() throws MojoExecutionException, UserError {
    if ((since == null) == (before == null)) {
      throw new MojoExecutionException(
          (since == null
                  ? "there is nothing to compare with"
                  : "linter.since and linter.before exclude each other")
              + ": write -Dlinter.since=HEAD, or -Dlinter.before with a folder of sites or one file");
    }
    if (before != null && !before.exists()) {
      throw new UserError(
          "linter.before names " + before + ", which does not exist: correct the path");
    }
  }

  @Override
  void compare(SiteLinter.Builder builder, FoundSites sites)
      throws MojoExecutionException, UserError {
    found = sites;
    if (since != null) {
      revision = Revision.open(sites.sites(), since);
      earlier = new EarlierFiles(revision, sites, this::shown).state();
    } else if (before != null) {
      earlier = state(before.toPath(), sites);
    }
  }

  /** A folder has the device types that lie beside it, unless others are named. */
  private SiteState state(Path folder, FoundSites sites) throws UserError {
    SettingsFiles settings = settings(folder);
    earlierTypes = settings.deviceTypes();
    return state(files(folder, sites.names(), settings), settings);
  }

  private SiteState state(List<FoundFile> files, SettingsFiles settings) throws UserError {
    Path types = settings.deviceTypes();
    try {
      return SiteState.of(inputs(files).stream(), types == null ? null : input(types));
    } catch (IOException unreadable) {
      throw UserError.of("the device types cannot be read", unreadable);
    }
  }

  @Override
  void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException, UserError {
    if (earlier == null || found == null) {
      throw new IllegalStateException("nothing to compare with");
    }
    ValidSettingsGuard.require(linter, console());
    if (earlierTypes != null && !earlierTypes.equals(found.settings().deviceTypes())) {
      SiteLinter.Builder then = SiteLinter.builder().deviceTypes(input(earlierTypes));
      ValidSettingsGuard.require(PluginLinterFactory.build(then), console());
    }
    SiteState later = state(found.files(), found.settings());
    List<SiteChange> changes = linter.changes(earlier, later);
    String compared = since != null ? since : shown(Path.of(String.valueOf(before)));
    ChangeReport.text(compared, changes).forEach(getLog()::info);
    AtomicFile.write(
        output("changes.md"),
        out -> out.write(ChangeReport.markdown(compared, changes).getBytes(UTF_8)));
    AtomicFile.write(output("changes.json"), out -> ChangeJson.write(compared, changes, out));
    console().tell(Level.NOTE, "Changes are in " + shown(output("")));
    List<Notification> troubles = new ArrayList<>(earlier.notifications());
    troubles.addAll(later.notifications());
    new ConsoleReport(console(), Level.NOTE).print(troubles);
    BuildOutcome.ofTroubles(troubles);
  }

  @Override
  void close() {
    if (revision != null) {
      revision.close();
    }
  }
}
