package org.headhouse.linter.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.draft.ListFault;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.FileUpdate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.Refusal;
import org.headhouse.linter.run.SharedSettings;
import org.headhouse.linter.source.FolderBoundary;

/**
 * What becomes of a list over a site: its faults, or a difference that is shown, and written where
 * that is asked for.
 *
 * @param list what it is called: {@code the list of units}
 * @param sites the folder of sites
 * @param file of the site
 * @param site how the file is called
 */
record UpdateOutcome(
    String list,
    Path sites,
    Path file,
    String site,
    SharedSettings shared,
    Console console,
    LinterMaker linters) {

  /** How a list is brought into a site. */
  @FunctionalInterface
  interface Update {
    SiteUpdate of(SiteInput list, SiteInput site) throws IOException;
  }

  /** Brings a list into the site; nothing is shown or written yet. */
  SiteUpdate made(Update update, SiteInput input) throws UserError {
    try {
      requireInside();
      return update.of(input, SiteInput.file(file, site));
    } catch (IOException unreadable) {
      throw UserError.of(list + " or the site cannot be read", unreadable);
    }
  }

  /** Shows an update, and writes it where that is asked for; or shows why there is none. */
  Outcome of(SiteUpdate update, boolean write) throws UserError {
    if (update instanceof SiteUpdate.Refused refused) {
      return refused(refused.faults());
    }
    show((SiteUpdate.Made) update, write);
    return Outcome.good();
  }

  /** Whoever sends in a link among the sites must not have another file shown or changed. */
  private void requireInside() throws IOException, UserError {
    if (file.startsWith(sites) && !new FolderBoundary(sites.toRealPath()).contains(file)) {
      throw new UserError(
          site + " is a link that leads out of the folder of sites: put a copy in its place");
    }
  }

  private void show(SiteUpdate.Made made, boolean write) throws UserError {
    new UpdateReport(made, shared, console, linters).print();
    if (write && UpdateReport.isChanged(made)) {
      FileUpdate.write(file, made.before(), made.after());
      console.report(Level.NOTE, "Wrote " + made.path());
    } else if (UpdateReport.isChanged(made)) {
      console.report(
          Level.NOTE,
          "Nothing is written. To write the changes: " + console.called().turnedOn("write"));
    }
  }

  /** Shows faults, for which nothing is written. */
  Outcome refused(List<ListFault> faults) {
    faults.stream()
        .flatMap(fault -> lines(fault, shared.mayShow(fault.location().file())))
        .forEach(line -> console.found(Level.ERROR, line));
    boolean ofSite = faults.get(0).location().file().equals(site);
    return Outcome.of(
        new Refusal(
            (ofSite ? "the site has " : list + " has ")
                + (faults.size() == 1 ? "1 fault" : faults.size() + " faults")
                + ", and nothing is written",
            faults.stream()
                .map(fault -> TextReport.headline(fault.location(), fault.message()))
                .toList()));
  }

  private static Stream<String> lines(ListFault fault, boolean withExcerpt) {
    return withExcerpt
        ? TextReport.lines(fault.location(), fault.message()).stream()
        : Stream.of(TextReport.inOneLine(fault.location(), fault.message()));
  }
}
