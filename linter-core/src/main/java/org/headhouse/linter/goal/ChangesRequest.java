package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.StaleParts;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.ChangeJson;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.report.OpenResults;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.Revision;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;
import org.headhouse.linter.run.SlackParameter;
import org.jspecify.annotations.Nullable;

/**
 * The sites are compared with an earlier state of theirs.
 *
 * @param output the folder for the changes, or null where they are only printed
 * @param since the revision that has the earlier state, or null for a folder
 * @param before the folder or file that has the earlier state, or null for a revision
 * @param slack the cable that is ordered beyond the measured lengths
 */
public record ChangesRequest(
    SitesRequest sites,
    @Nullable Path output,
    @Nullable String since,
    @Nullable Path before,
    Slack slack)
    implements GoalRequest {

  /**
   * A request of what a user gives.
   *
   * @param slack in percent
   * @throws UserError where there is nothing to compare with, or too much
   */
  public static ChangesRequest of(
      SitesRequest sites,
      @Nullable Path output,
      @Nullable String since,
      @Nullable Path before,
      String slack)
      throws UserError {
    ParameterNames called = sites.settings().called();
    if ((since == null) == (before == null)) {
      throw new UserError(
          (since == null
                  ? "there is nothing to compare with"
                  : called.of("since") + " and " + called.of("before") + " cannot be combined")
              + ": use "
              + called.typed("since", "HEAD")
              + ", or "
              + beforeInstead(called));
    }
    if (before != null && !Files.exists(before)) {
      throw new UserError(
          called.of("before") + " names " + before + ", which does not exist: correct the path");
    }
    return new ChangesRequest(
        sites, output, since, before, SlackParameter.of(called.of("slack"), slack));
  }

  private static String beforeInstead(ParameterNames called) {
    return called.typed("before") + " with a folder of sites or one file";
  }

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteRun now = sites.find();
    now.reportSettings(console);
    return since != null
        ? since(since, now, console, linters)
        : before(Objects.requireNonNull(before), now, console, linters);
  }

  private Outcome since(String name, SiteRun now, Console console, LinterMaker linters)
      throws UserError {
    ParameterNames called = sites.settings().called();
    try (Revision revision =
        Revision.open(now.found().sites(), name, called, "instead use " + beforeInstead(called))) {
      SiteState earlier = new EarlierFiles(revision, now.found(), now.base()::shown).state();
      SiteLinter linter = linters.make(now.builder().withoutBaseline());
      Outcome settings = ValidSettingsGuard.check(linter, console);
      return settings.isGood() ? compare(name, earlier, now, linter, console) : settings;
    }
  }

  private Outcome before(Path place, SiteRun now, Console console, LinterMaker linters)
      throws UserError {
    SiteRun then = sites.in(place).find();
    SiteState earlier = state(then);
    SiteLinter linter = linters.make(now.builder().withoutBaseline());
    Outcome settings = ValidSettingsGuard.check(linter, console);
    if (settings.isGood()) {
      settings = checkTypes(then, now, console, linters);
    }
    return settings.isGood()
        ? compare(now.base().shown(place), earlier, now, linter, console)
        : settings;
  }

  /** A folder has the device types that lie beside it, unless others are named. */
  private static Outcome checkTypes(SiteRun then, SiteRun now, Console console, LinterMaker linters)
      throws UserError {
    SiteInput types = then.settings().deviceTypes();
    Path file = then.found().settings().deviceTypes();
    if (types != null && file != null && !file.equals(now.found().settings().deviceTypes())) {
      SiteLinter.Builder builder =
          SiteLinter.builder()
              .deviceTypes(types)
              .withoutLinesOf(name -> !then.settings().mayShow(name));
      return ValidSettingsGuard.check(linters.make(builder), console);
    }
    return Outcome.good();
  }

  private static SiteState state(SiteRun run) throws UserError {
    try {
      return SiteState.of(run.inputs(), run.settings().deviceTypes());
    } catch (IOException unreadable) {
      throw UserError.of("the device types cannot be read", unreadable);
    }
  }

  private Outcome compare(
      String compared, SiteState earlier, SiteRun now, SiteLinter linter, Console console)
      throws UserError {
    SiteState later = state(now);
    List<SiteChange> changes = linter.changes(earlier, later);
    OpenResults open = open(changes, now, linter);
    ChangeReport.text(compared, changes, slack, open)
        .forEach(line -> console.found(Level.NOTE, line));
    if (output != null) {
      write(output, compared, changes, open);
      console.report(Level.NOTE, "Changes are in " + now.base().shown(output));
    }
    List<Notification> notifications = new ArrayList<>(earlier.notifications());
    notifications.addAll(later.notifications());
    new ConsoleReport(console, Level.NOTE).print(notifications);
    return Outcome.of(notifications);
  }

  /** What is wrong in the sites that differ, so that no plan leads to a faulty line unsaid. */
  private static OpenResults open(List<SiteChange> changes, SiteRun now, SiteLinter linter) {
    Set<String> differing =
        changes.stream()
            .filter(SiteChange.Changed.class::isInstance)
            .map(SiteChange::file)
            .collect(Collectors.toSet());
    return new OpenResults(
        linter
            .check(now.inputs().filter(input -> differing.contains(input.path())))
            .at(Level.WARNING));
  }

  private void write(Path folder, String compared, List<SiteChange> changes, OpenResults open)
      throws UserError {
    StaleParts.sweep(folder);
    AtomicFile.write(
        folder.resolve("changes.md"),
        out -> out.write(ChangeReport.markdown(compared, changes, slack, open).getBytes(UTF_8)));
    AtomicFile.write(
        folder.resolve("changes.json"),
        out -> ChangeJson.write(compared, changes, slack, open, out));
  }
}
