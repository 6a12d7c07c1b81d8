package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
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
public record DraftRequest(
    SettingsRequest settings, Path list, DraftSettings draft, Path file, boolean write)
    implements GoalRequest {

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SharedSettings shared = settings.find();
    shared.report(settings.sites(), console);
    SiteLinter linter = linters.make(shared.builder());
    Outcome valid = ValidSettingsGuard.check(linter, console);
    if (!valid.isGood()) {
      return valid;
    }
    UpdateOutcome outcome =
        new UpdateOutcome(
            "the list of units",
            settings.sites(),
            file,
            settings.base().shown(file),
            shared,
            console,
            linters);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return update(linter, outcome);
    }
    Draft made = draft(linter);
    if (made instanceof Draft.Refused refused) {
      return outcome.refused(refused.faults());
    }
    write(((Draft.Made) made).text(), linter, console);
    return Outcome.good();
  }

  private void write(String text, SiteLinter linter, Console console) throws UserError {
    String shown = settings.base().shown(file);
    AtomicFile.writeNew(file, out -> out.write(text.getBytes(UTF_8)));
    console.report(Level.NOTE, "Wrote " + shown + ": go through the lines marked \"look:\"");
    new ConsoleReport(console, Level.NOTE)
        .print(linter.check(Stream.of(SiteInput.file(file, shown))));
  }

  private Draft draft(SiteLinter linter) throws UserError {
    try {
      return linter.draft(listInput(), draft);
    } catch (IOException unreadable) {
      throw UserError.of("the list of units cannot be read", unreadable);
    }
  }

  private Outcome update(SiteLinter linter, UpdateOutcome outcome) throws UserError {
    SiteUpdate update = outcome.made(linter::update, listInput());
    if (update instanceof SiteUpdate.Made made && !made.site().equals(draft.site())) {
      ParameterNames called = settings.called();
      throw new UserError(
          made.path()
              + " is the site "
              + made.site()
              + ", and not "
              + draft.site()
              + ": use "
              + called.typed("site", made.site())
              + ", or name another file with "
              + called.of("output"));
    }
    return outcome.of(update, write);
  }

  private SiteInput listInput() {
    return SiteInput.file(list, settings.base().shown(list));
  }
}
