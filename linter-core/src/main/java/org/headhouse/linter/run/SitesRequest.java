package org.headhouse.linter.run;

import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.SiteFiles;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * What a user asks to be run over, as the plugin and the command take it from their parameters.
 *
 * @param settings where the sites are, and what holds for them
 * @param includes which files of a folder are sites
 * @param excludes which files of a folder are none all the same
 * @param allowEmpty whether it is fine that a folder has none
 * @param threads how many files are worked on at a time, at most
 */
public record SitesRequest(
    SettingsRequest settings,
    List<String> includes,
    List<String> excludes,
    boolean allowEmpty,
    int threads) {

  public SitesRequest {
    includes = List.copyOf(includes);
    excludes = List.copyOf(excludes);
  }

  /**
   * Looks at the number of threads that was asked for.
   *
   * @param asked or null for the number of cores
   * @throws UserError where it is none
   */
  public static int threads(@Nullable Integer asked, ParameterNames called) throws UserError {
    if (asked == null) {
      return Runtime.getRuntime().availableProcessors();
    }
    if (asked < 1) {
      throw new UserError(called.of("threads") + " cannot be " + asked + ": use 1 or more");
    }
    return asked;
  }

  /** The same for sites in another place. */
  public SitesRequest in(Path other) {
    return new SitesRequest(settings.in(other), includes, excludes, allowEmpty, threads);
  }

  /** Which files of a folder are sites. */
  public SiteNames names() throws UserError {
    return new SiteNames(includes, excludes, settings.called());
  }

  /** The search for sites. */
  public SiteFiles files(SiteNames names) {
    return new SiteFiles(settings.sites(), names, allowEmpty, settings.called());
  }

  /**
   * Finds the sites, and what holds for them.
   *
   * @throws UserError where there are none, or something cannot be read
   */
  public SiteRun find() throws UserError {
    SettingsFiles shared = settings.find().files();
    SiteNames names = names();
    return run(files(names).find(shared));
  }

  /** A run over sites that were found. */
  public SiteRun run(FoundSites found) {
    return new SiteRun(found, settings.base(), threads);
  }
}
