package org.headhouse.linter.command;

import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.Revision;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.SiteRun;

/**
 * A check that compares with an earlier revision. A class of its own, so that git's library is
 * loaded only where one is named.
 *
 * @param all whether the run has all sites of their folder; else one that it lacks is not gone
 * @param since the revision, as git takes it
 */
record ComparingCheck(SiteRun run, boolean all, String since) {

  CheckReport check(SiteLinter.Builder builder, LinterMaker linters, Console console)
      throws UserError {
    try (Revision revision = Revision.open(run.found().sites(), since, OptionNames.NAMES)) {
      SiteState earlier = new EarlierFiles(revision, run.found(), run.base()::shown).state();
      return run.check(
          linters.make(all ? builder.beforeAll(earlier) : builder.before(earlier)), console);
    }
  }
}
