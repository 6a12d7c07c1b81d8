package org.headhouse.linter.goal;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SettingsRequest;
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
    return ListRun.of("the list from the visit", list, settings, console, linters, this::run);
  }

  private Outcome run(ListRun run) throws UserError {
    Path file = output == null ? usual(run) : output;
    if (file == null) {
      return withoutSite(run);
    }
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UserError(
          "there is no "
              + settings.base().shown(file)
              + ": name the file of the site with "
              + settings.called().typed("output", "<file>"));
    }
    SiteUpdate update = run.made(run.linter()::visit, file);
    if (site != null && output != null) {
      run.requireSite(site, update);
    }
    return run.of(update, file, write);
  }

  /** A list that cannot be read says no site either, and its faults say what to do. */
  private Outcome withoutSite(ListRun run) throws UserError {
    SiteUpdate update = run.read(() -> run.linter().visit(run.list(), SiteInput.text("", "")));
    if (update instanceof SiteUpdate.Refused refused && run.areOfList(refused.faults())) {
      return run.refused(refused.faults());
    }
    throw new UserError(
        run.list().path()
            + " does not say which site it is of: name it with "
            + settings.called().typed("site", "<id>"));
  }

  /** Null where the list does not say which site it is of. */
  private @Nullable Path usual(ListRun run) throws UserError {
    String id =
        site == null ? run.read(() -> run.linter().siteOfVisit(run.list())).orElse(null) : site;
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
