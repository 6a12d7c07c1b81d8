package org.headhouse.linter.goal;

import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.SettingsRequest;
import org.jspecify.annotations.Nullable;

/**
 * What a user gives to the goal draft: one of two lists, and what belongs to it.
 *
 * @param list of units, or null
 * @param visit a list that was filled in on a visit, or null
 * @param site the id of the site, or null
 * @param output the file of the site, or null for the usual one
 * @param write whether a site that is there is written
 */
public record DraftChoice(
    SettingsRequest settings,
    @Nullable Path list,
    @Nullable Path visit,
    @Nullable String site,
    @Nullable Path output,
    boolean write,
    DraftOptions options) {

  /**
   * The request for the list that is given.
   *
   * @throws UserError where there is none, or more than one, or something is missing
   */
  public GoalRequest request() throws UserError {
    ParameterNames called = settings.called();
    if (visit != null) {
      if (list != null) {
        throw new UserError(
            called.of("csv")
                + " is a list of units, and "
                + called.of("visit")
                + " one from a visit: give one of the two");
      }
      List<String> given = options.given(called);
      if (!given.isEmpty()) {
        throw new UserError(
            called.of("visit")
                + " adds to a site that is there: leave out "
                + String.join(", ", given)
                + " (only for a new site)");
      }
      return new VisitRequest(settings, visit, site, output, write);
    }
    if (list == null || site == null) {
      throw new UserError(missing(called));
    }
    Path file = output == null ? UsualSiteFile.of(settings.sites(), site) : output;
    return new DraftRequest(
        settings, list, options.settings(site, called), options.given(called), file, write);
  }

  private String missing(ParameterNames called) {
    String typedList = called.typed("csv", "<file>");
    String typedSite = called.typed("site", "<id>");
    if (site != null) {
      return "there is no list of units: use " + typedList;
    }
    return list != null
        ? "the site has no id: use " + typedSite
        : "there is neither a list of units nor an id for the site: use "
            + typedList
            + " and "
            + typedSite;
  }
}
