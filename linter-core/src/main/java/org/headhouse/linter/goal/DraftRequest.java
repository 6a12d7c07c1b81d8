package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SettingsRequest;

/**
 * A site is made of a list of units; one that is there is compared with the list.
 *
 * @param settings what holds for the site
 * @param list the list of units
 * @param draft what else a new site gets
 * @param given how the user calls what is given for a new site alone
 * @param file to write
 * @param write whether a site that is there is written; else only the difference is shown
 */
public record DraftRequest(
    SettingsRequest settings,
    Path list,
    DraftSettings draft,
    List<String> given,
    Path file,
    boolean write)
    implements GoalRequest {

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    return ListRun.of("the list of units", list, settings, console, linters, this::run);
  }

  private Outcome run(ListRun run) throws UserError {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return update(run);
    }
    Draft made = run.read(() -> run.linter().draft(run.list(), draft));
    if (made instanceof Draft.Refused refused) {
      return run.refused(refused.faults());
    }
    write(((Draft.Made) made).text(), run);
    return Outcome.good();
  }

  private void write(String text, ListRun run) throws UserError {
    String shown = settings.base().shown(file);
    AtomicFile.writeNew(file, out -> out.write(text.getBytes(UTF_8)));
    run.console().report(Level.NOTE, "Wrote " + shown + ": go through the lines marked \"look:\"");
    new ConsoleReport(run.console(), Level.NOTE)
        .print(run.linter().check(Stream.of(SiteInput.file(file, shown))));
  }

  private Outcome update(ListRun run) throws UserError {
    SiteUpdate update = run.made(run.linter()::update, file);
    run.requireSite(draft.site(), update);
    if (!given.isEmpty()) {
      run.console()
          .report(
              Level.WARNING,
              "Not used, because "
                  + settings.base().shown(file)
                  + " exists: "
                  + String.join(", ", given)
                  + " (only for a new site)");
    }
    return run.of(update, file, write);
  }
}
