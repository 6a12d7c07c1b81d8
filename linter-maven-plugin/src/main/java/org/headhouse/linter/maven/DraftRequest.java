package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.SettingsRequest;
import org.headhouse.linter.run.SharedSettings;

/**
 * A site is made of a list of units; one that is there is compared with the list.
 *
 * @param settings what holds for the site
 * @param list the list of units
 * @param draft what else a new site gets
 * @param file to write
 * @param write whether a site that is there is written; else only the difference is shown
 */
record DraftRequest(
    SettingsRequest settings, Path list, DraftSettings draft, Path file, boolean write)
    implements GoalRequest {

  @Override
  public void run(Console console) throws MojoFailureException, MojoExecutionException, UserError {
    SharedSettings shared = settings.find();
    SiteLinter linter = linter(shared, console);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      update(linter, shared, console);
    } else {
      draft(linter, shared, console);
    }
  }

  private SiteLinter linter(SharedSettings shared, Console console)
      throws MojoFailureException, MojoExecutionException, UserError {
    shared.report(settings.sites(), console);
    SiteLinter linter = PluginLinterFactory.build(shared.builder());
    ValidSettingsGuard.require(linter, console);
    return linter;
  }

  private void draft(SiteLinter linter, SharedSettings shared, Console console)
      throws MojoFailureException, UserError {
    String shown = settings.base().shown(file);
    String text = text(linter, shared, console);
    AtomicFile.writeNew(file, out -> out.write(text.getBytes(UTF_8)));
    console.report(Level.NOTE, "Wrote " + shown + ": go through the lines marked \"look:\"");
    new ConsoleReport(console, Level.NOTE)
        .print(linter.check(Stream.of(SiteInput.file(file, shown))));
  }

  private String text(SiteLinter linter, SharedSettings shared, Console console)
      throws MojoFailureException, UserError {
    Draft made;
    try {
      made = linter.draft(listInput(), draft);
    } catch (IOException unreadable) {
      throw UserError.of("the list of units cannot be read", unreadable);
    }
    if (made instanceof Draft.Refused refused) {
      throw outcome(shared, console).refused(refused.faults());
    }
    return ((Draft.Made) made).text();
  }

  private void update(SiteLinter linter, SharedSettings shared, Console console)
      throws MojoFailureException, MojoExecutionException, UserError {
    UpdateOutcome outcome = outcome(shared, console);
    SiteUpdate.Made made = outcome.made(linter::update, listInput());
    if (!made.site().equals(draft.site())) {
      throw new UserError(
          made.path()
              + " is the site "
              + made.site()
              + ", and not "
              + draft.site()
              + ": use -Dlinter.site="
              + made.site()
              + ", or name another file with linter.output");
    }
    outcome.show(made, write);
  }

  private UpdateOutcome outcome(SharedSettings shared, Console console) {
    return new UpdateOutcome(
        "the list of units", settings.sites(), file, settings.base().shown(file), shared, console);
  }

  private SiteInput listInput() {
    return SiteInput.file(list, settings.base().shown(list));
  }
}
