package org.headhouse.linter.maven;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.draft.ListFault;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.FileUpdate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
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
    String list, Path sites, Path file, String site, SharedSettings shared, Console console) {

  /** How a list is brought into a site. */
  @FunctionalInterface
  interface Update {
    SiteUpdate of(SiteInput list, SiteInput site) throws IOException;
  }

  /** The update, where the list and the site have no fault. */
  SiteUpdate.Made made(Update update, SiteInput input) throws MojoFailureException, UserError {
    SiteUpdate made;
    try {
      requireInside();
      made = update.of(input, SiteInput.file(file, site));
    } catch (IOException unreadable) {
      throw UserError.of(list + " or the site cannot be read", unreadable);
    }
    if (made instanceof SiteUpdate.Refused refused) {
      throw refused(refused.faults());
    }
    return (SiteUpdate.Made) made;
  }

  /** Whoever sends in a link among the sites must not have another file shown or changed. */
  private void requireInside() throws IOException, UserError {
    if (file.startsWith(sites) && !new FolderBoundary(sites.toRealPath()).contains(file)) {
      throw new UserError(
          site + " is a link that leads out of the folder of sites: put a copy in its place");
    }
  }

  /** Shows what an update changes, and writes it where that is asked for. */
  void show(SiteUpdate.Made made, boolean write) throws MojoExecutionException, UserError {
    new UpdateReport(made, shared, console).print();
    if (write && UpdateReport.isChanged(made)) {
      FileUpdate.write(file, made.before(), made.after());
      console.report(Level.NOTE, "Wrote " + made.path());
    } else if (UpdateReport.isChanged(made)) {
      console.report(Level.NOTE, "Nothing is written. To write the changes: -Dlinter.write=true");
    }
  }

  /** Shows faults, and fails. */
  MojoFailureException refused(List<ListFault> faults) {
    faults.stream()
        .flatMap(fault -> lines(fault, shared.mayShow(fault.location().file())))
        .forEach(line -> console.found(Level.ERROR, line));
    boolean ofSite = faults.get(0).location().file().equals(site);
    return new MojoFailureException(
        (ofSite ? "the site has " : list + " has ")
            + (faults.size() == 1 ? "1 fault" : faults.size() + " faults")
            + ", and nothing is written:\n"
            + BuildOutcome.first(
                faults, fault -> TextReport.headline(fault.location(), fault.message())));
  }

  private static Stream<String> lines(ListFault fault, boolean withExcerpt) {
    return withExcerpt
        ? TextReport.lines(fault.location(), fault.message()).stream()
        : Stream.of(TextReport.headline(fault.location(), fault.message()));
  }
}
