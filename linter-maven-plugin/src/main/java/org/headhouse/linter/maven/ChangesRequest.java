package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.StaleParts;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.ChangeJson;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.Revision;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * The sites are compared with an earlier state of theirs.
 *
 * @param output the folder for the changes
 * @param since the revision that has the earlier state, or null for a folder
 * @param before the folder or file that has the earlier state, or null for a revision
 * @param slack the cable that is ordered beyond the measured lengths
 */
record ChangesRequest(
    SitesRequest sites, Path output, @Nullable String since, @Nullable Path before, Slack slack)
    implements GoalRequest {

  @Override
  public void run(Console console) throws MojoFailureException, MojoExecutionException, UserError {
    SiteRun now = sites.find();
    now.reportSettings(console);
    if (since != null) {
      try (Revision revision = Revision.open(now.found().sites(), since, PluginParameters::name)) {
        SiteState earlier = new EarlierFiles(revision, now.found(), now.base()::shown).state();
        compare(since, earlier, now, linter(now, console), console);
      }
    } else if (before != null) {
      SiteRun then = sites.in(before).find();
      SiteState earlier = state(then);
      SiteLinter linter = linter(now, console);
      requireValidTypes(then, now, console);
      compare(now.base().shown(before), earlier, now, linter, console);
    }
  }

  private static SiteLinter linter(SiteRun run, Console console)
      throws MojoFailureException, MojoExecutionException, UserError {
    SiteLinter linter = PluginLinterFactory.build(run.builder().withoutBaseline());
    ValidSettingsGuard.require(linter, console);
    return linter;
  }

  /** A folder has the device types that lie beside it, unless others are named. */
  private static void requireValidTypes(SiteRun then, SiteRun now, Console console)
      throws MojoFailureException, MojoExecutionException, UserError {
    SiteInput types = then.settings().deviceTypes();
    Path file = then.found().settings().deviceTypes();
    if (types != null && file != null && !file.equals(now.found().settings().deviceTypes())) {
      SiteLinter.Builder builder =
          SiteLinter.builder()
              .deviceTypes(types)
              .withoutLinesOf(name -> !then.settings().mayShow(name));
      ValidSettingsGuard.require(PluginLinterFactory.build(builder), console);
    }
  }

  private static SiteState state(SiteRun run) throws UserError {
    try {
      return SiteState.of(run.inputs(), run.settings().deviceTypes());
    } catch (IOException unreadable) {
      throw UserError.of("the device types cannot be read", unreadable);
    }
  }

  private void compare(
      String compared, SiteState earlier, SiteRun now, SiteLinter linter, Console console)
      throws MojoExecutionException, UserError {
    SiteState later = state(now);
    List<SiteChange> changes = linter.changes(earlier, later);
    ChangeReport.text(compared, changes, slack).forEach(line -> console.report(Level.NOTE, line));
    StaleParts.sweep(output);
    AtomicFile.write(
        output.resolve("changes.md"),
        out -> out.write(ChangeReport.markdown(compared, changes, slack).getBytes(UTF_8)));
    AtomicFile.write(
        output.resolve("changes.json"), out -> ChangeJson.write(compared, changes, slack, out));
    console.report(Level.NOTE, "Changes are in " + now.base().shown(output));
    List<Notification> notifications = new ArrayList<>(earlier.notifications());
    notifications.addAll(later.notifications());
    new ConsoleReport(console, Level.NOTE).print(notifications);
    BuildOutcome.of(notifications);
  }
}
