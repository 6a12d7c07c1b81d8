package org.headhouse.linter.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
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
import org.headhouse.linter.run.SettingsRequest;
import org.headhouse.linter.run.SharedSettings;
import org.headhouse.linter.source.FolderBoundary;

/**
 * What becomes of a list: its faults, or a difference to a site, which is shown, and written where
 * that is asked for.
 *
 * @param called what the list is called: {@code the list of units}
 */
record ListRun(
    String called,
    SiteInput list,
    SiteLinter linter,
    SettingsRequest settings,
    SharedSettings shared,
    Console console,
    LinterMaker linters) {

  /** What is done with a list. */
  @FunctionalInterface
  interface Work {
    Outcome of(ListRun run) throws UserError;
  }

  /** What reads the list, or a site as well. */
  @FunctionalInterface
  interface Reader<T> {
    T read() throws IOException;
  }

  /** How a list is brought into a site. */
  @FunctionalInterface
  interface Update {
    SiteUpdate of(SiteInput list, SiteInput site) throws IOException;
  }

  /** Does some work with a list, unless the policy or the device types have an error. */
  static Outcome of(
      String called,
      Path list,
      SettingsRequest settings,
      Console console,
      LinterMaker linters,
      Work work)
      throws UserError {
    SharedSettings shared = settings.find();
    shared.report(settings.sites(), console);
    SiteLinter linter = linters.make(shared.builder());
    Outcome valid = ValidSettingsGuard.check(linter, console);
    SiteInput input = SiteInput.file(list, settings.base().shown(list));
    return valid.isGood()
        ? work.of(new ListRun(called, input, linter, settings, shared, console, linters))
        : valid;
  }

  /** What is read of the list alone. */
  <T> T read(Reader<T> reader) throws UserError {
    try {
      return reader.read();
    } catch (IOException unreadable) {
      throw UserError.of(called + " cannot be read", unreadable);
    }
  }

  /** Brings the list into a site; nothing is shown or written yet. */
  SiteUpdate made(Update update, Path file) throws UserError {
    String site = settings.base().shown(file);
    try {
      requireInside(file, site);
      return update.of(list, SiteInput.file(file, site));
    } catch (IOException unreadable) {
      throw UserError.of(called + " or the site cannot be read", unreadable);
    }
  }

  /** Refuses a file that is another site than the one that is asked for. */
  void requireSite(String site, SiteUpdate update) throws UserError {
    if (update instanceof SiteUpdate.Made made && !made.site().equals(site)) {
      throw new UserError(
          made.path()
              + " is the site "
              + made.site()
              + ", and not "
              + site
              + ": use "
              + settings.called().typed("site", made.site())
              + ", or name another file with "
              + settings.called().of("output"));
    }
  }

  /** Shows an update, and writes it where that is asked for; or shows why there is none. */
  Outcome of(SiteUpdate update, Path file, boolean write) throws UserError {
    if (update instanceof SiteUpdate.Refused refused) {
      return refused(refused.faults());
    }
    show((SiteUpdate.Made) update, file, write);
    return Outcome.good();
  }

  /** Whoever sends in a link among the sites must not have another file shown or changed. */
  private void requireInside(Path file, String site) throws IOException, UserError {
    Path sites = settings.sites();
    if (file.startsWith(sites) && !new FolderBoundary(sites.toRealPath()).contains(file)) {
      throw new UserError(
          site + " is a link that leads out of the folder of sites: put a copy in its place");
    }
  }

  private void show(SiteUpdate.Made made, Path file, boolean write) throws UserError {
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
    return Outcome.of(
        new Refusal(
            (areOfList(faults) ? called + " has " : "the site has ")
                + (faults.size() == 1 ? "1 fault" : faults.size() + " faults")
                + ", and nothing is written",
            faults.stream()
                .map(fault -> TextReport.headline(fault.location(), fault.message()))
                .toList()));
  }

  /** Faults are those of the list, or those of the site. */
  boolean areOfList(List<ListFault> faults) {
    return faults.get(0).location().file().equals(list.path());
  }

  private static Stream<String> lines(ListFault fault, boolean withExcerpt) {
    return withExcerpt
        ? TextReport.lines(fault.location(), fault.message()).stream()
        : Stream.of(TextReport.inOneLine(fault.location(), fault.message()));
  }
}
