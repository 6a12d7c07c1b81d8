package org.headhouse.linter.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.Revision;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.SiteRun;
import org.jspecify.annotations.Nullable;

/**
 * The state of the sites that says which lines were in operation; its revision is open until this
 * is closed.
 *
 * @param state null where there is none
 */
record ComparedState(@Nullable Revision revision, @Nullable SiteState state)
    implements AutoCloseable {

  /**
   * The state at a revision, or at the last commit. If nobody asked for one and the last commit
   * cannot be read, nothing is known of any line.
   *
   * @param since the revision, or null for the last commit, if there is one
   * @throws UserError where a revision that was asked for cannot be read
   */
  static ComparedState of(
      SiteRun run, @Nullable String since, ParameterNames called, Console console)
      throws UserError {
    Path place = run.found().sites();
    Revision revision = null;
    try {
      revision = since == null ? Revision.last(place, called) : Revision.open(place, since, called);
      return new ComparedState(revision, revision == null ? null : state(revision, run));
    } catch (UserError unreadable) {
      if (revision != null) {
        revision.close();
      }
      if (since != null) {
        throw unreadable;
      }
      console.report(
          Level.WARNING,
          "the last commit cannot be read, so any line may be in operation: what is set at its"
              + " units is only changed by a proposed fix");
      return new ComparedState(null, unreadable(run));
    }
  }

  private static SiteState state(Revision revision, SiteRun run) throws UserError {
    return new EarlierFiles(revision, run.found(), run.base()::shown).state();
  }

  private static SiteState unreadable(SiteRun run) throws UserError {
    Stream<SiteInput> sites = run.inputs().map(site -> unreadable(site.path()));
    try {
      return SiteState.of(sites, null);
    } catch (IOException never) {
      throw UserError.of("the last commit cannot be read", never);
    }
  }

  private static SiteInput unreadable(String path) {
    return new SiteInput(
        path,
        most -> {
          throw new IOException("the commit cannot be read");
        });
  }

  @Override
  public void close() {
    if (revision != null) {
      revision.close();
    }
  }
}
