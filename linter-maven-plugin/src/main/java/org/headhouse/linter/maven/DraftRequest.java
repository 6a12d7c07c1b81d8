package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.ListFault;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.SettingsRequest;
import org.headhouse.linter.run.SharedSettings;

/**
 * A site is made of a list of units.
 *
 * @param settings what holds for the site
 * @param list the list of units
 * @param draft what else the site gets
 * @param file to write
 */
record DraftRequest(SettingsRequest settings, Path list, DraftSettings draft, Path file)
    implements GoalRequest {

  @Override
  public void run(Console console) throws MojoFailureException, MojoExecutionException, UserError {
    String shown = settings.base().shown(file);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UserError(
          shown
              + " is there already, and is left as it is: move it away, or name another file with"
              + " linter.output");
    }
    SharedSettings shared = settings.find();
    SiteLinter linter = linter(shared, console);
    String text = text(linter, shared, console);
    AtomicFile.writeNew(file, out -> out.write(text.getBytes(UTF_8)));
    console.report(Level.NOTE, "Wrote " + shown + ": go through the lines marked \"look:\"");
    new ConsoleReport(console, Level.NOTE)
        .print(linter.check(Stream.of(SiteInput.file(file, shown))));
  }

  private SiteLinter linter(SharedSettings shared, Console console)
      throws MojoFailureException, MojoExecutionException, UserError {
    shared.report(settings.sites(), console);
    SiteLinter linter = PluginLinterFactory.build(shared.builder());
    ValidSettingsGuard.require(linter, console);
    return linter;
  }

  private String text(SiteLinter linter, SharedSettings shared, Console console)
      throws MojoFailureException, UserError {
    String shown = settings.base().shown(list);
    Draft made;
    try {
      made = linter.draft(SiteInput.file(list, shown), draft);
    } catch (IOException unreadable) {
      throw UserError.of("the list of units cannot be read", unreadable);
    }
    if (made instanceof Draft.Refused refused) {
      refused.faults().stream()
          .flatMap(fault -> lines(fault, shared.mayShow(shown)))
          .forEach(line -> console.found(Level.ERROR, line));
      throw new MojoFailureException(repeated(refused.faults()));
    }
    return ((Draft.Made) made).text();
  }

  private static Stream<String> lines(ListFault fault, boolean withExcerpt) {
    return withExcerpt
        ? TextReport.lines(fault.location(), fault.message()).stream()
        : Stream.of(TextReport.headline(fault.location(), fault.message()));
  }

  private static String repeated(List<ListFault> faults) {
    return "the list of units has "
        + (faults.size() == 1 ? "1 fault" : faults.size() + " faults")
        + ", and nothing is written:\n"
        + BuildOutcome.first(
            faults, fault -> TextReport.headline(fault.location(), fault.message()));
  }
}
