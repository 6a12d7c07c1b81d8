package org.headhouse.linter.goal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SettingsRequest;
import org.headhouse.linter.run.SharedSettings;
import org.headhouse.linter.site.Format;
import org.jspecify.annotations.Nullable;

/**
 * What was found on a visit is added to the record of its site.
 *
 * @param settings what holds for the site
 * @param list that was filled in
 * @param site the id of the site; null for the one that the list names
 * @param output the file of the site; null for the usual one
 * @param write whether the site is written; else only the difference is shown
 */
public record VisitRequest(
    SettingsRequest settings,
    Path list,
    @Nullable String site,
    @Nullable Path output,
    boolean write)
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
    SiteInput input = SiteInput.file(list, settings.base().shown(list));
    Path file = output == null ? usual(linter, input) : output;
    if (file == null) {
      return withoutSite(linter, input, outcome(settings.sites(), shared, console, linters));
    }
    String shown = settings.base().shown(file);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UserError(
          "there is no "
              + shown
              + ": name the file of the site with "
              + settings.called().typed("output", "<file>"));
    }
    UpdateOutcome outcome = outcome(file, shared, console, linters);
    return outcome.of(outcome.made(linter::visit, input), write);
  }

  private UpdateOutcome outcome(
      Path file, SharedSettings shared, Console console, LinterMaker linters) {
    return new UpdateOutcome(
        "the list from the visit",
        settings.sites(),
        file,
        settings.base().shown(file),
        shared,
        console,
        linters);
  }

  /** A list that cannot be read says no site either, and its faults say what to do. */
  private Outcome withoutSite(SiteLinter linter, SiteInput input, UpdateOutcome outcome)
      throws UserError {
    try {
      if (linter.visit(input, SiteInput.text("", "")) instanceof SiteUpdate.Refused refused
          && refused.faults().get(0).location().file().equals(input.path())) {
        return outcome.refused(refused.faults());
      }
    } catch (IOException unreadable) {
      throw UserError.of("the list from the visit cannot be read", unreadable);
    }
    throw new UserError(
        input.path()
            + " does not say which site it is of: name it with "
            + settings.called().typed("site", "<id>"));
  }

  /** Null where the list does not say which site it is of. */
  private @Nullable Path usual(SiteLinter linter, SiteInput input) throws UserError {
    String id = site;
    if (id == null) {
      try {
        id = linter.siteOfVisit(input).orElse(null);
      } catch (IOException unreadable) {
        throw UserError.of("the list from the visit cannot be read", unreadable);
      }
    }
    if (id == null) {
      return null;
    }
    if (!Format.isId(id)) {
      throw new UserError(
          "the site has no id that its file can be found by: name the file with "
              + settings.called().typed("output", "<file>"));
    }
    return UsualSiteFile.of(settings.sites(), id);
  }
}
