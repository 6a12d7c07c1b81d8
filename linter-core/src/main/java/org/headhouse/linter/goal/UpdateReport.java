package org.headhouse.linter.goal;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.change.Consequence;
import org.headhouse.linter.change.FieldWork;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.SharedSettings;

/**
 * Reports what a list changes in a site: the difference, what the site is like with it, and what it
 * makes stale, which somebody has to renew.
 */
final class UpdateReport {
  private final SiteUpdate.Made update;
  private final SharedSettings shared;
  private final Console console;
  private final LinterMaker linters;

  UpdateReport(
      SiteUpdate.Made update, SharedSettings shared, Console console, LinterMaker linters) {
    this.update = update;
    this.shared = shared;
    this.console = console;
    this.linters = linters;
  }

  static boolean isChanged(SiteUpdate.Made update) {
    return !Arrays.equals(update.before(), update.after());
  }

  void print() throws UserError {
    for (SiteUpdate.Remark remark : update.remarks()) {
      console.report(remark.level(), TextReport.printable(update.path() + ": " + remark.text()));
    }
    if (!isChanged(update)) {
      note("the list adds nothing to " + update.path());
      return;
    }
    if (shared.mayShow(update.path())) {
      UnifiedDiff.of(update.path(), update.before(), update.after()).forEach(this::found);
    }
    SiteState before = state(update.before());
    SiteLinter linter = linters.make(shared.builder().before(before));
    consequences(linter.changes(before, state(update.after())));
    note("With these changes, " + update.path() + " has these results:");
    new ConsoleReport(console, Level.NOTE).print(linter.check(Stream.of(input(update.after()))));
  }

  private void consequences(List<SiteChange> changes) {
    for (SiteChange change : changes) {
      if (change instanceof SiteChange.Changed changed) {
        for (Consequence consequence : changed.consequences()) {
          console.report(
              consequence.kind() == Consequence.Kind.RECORD ? Level.WARNING : Level.NOTE,
              TextReport.printable("Also to do: " + consequence.text()));
        }
        if (changed.work() instanceof FieldWork.Plan plan && !plan.steps().isEmpty()) {
          note("Once the changes are written, the goal changes gives the order of the work");
        }
      }
    }
  }

  private void note(String line) {
    console.report(Level.NOTE, TextReport.printable(line));
  }

  private void found(String line) {
    console.found(Level.NOTE, line);
  }

  private SiteState state(byte[] bytes) throws UserError {
    try {
      return SiteState.of(Stream.of(input(bytes)), shared.deviceTypes());
    } catch (IOException unreadable) {
      throw UserError.of("the device types cannot be read", unreadable);
    }
  }

  private SiteInput input(byte[] bytes) {
    return new SiteInput(update.path(), most -> bytes);
  }
}
