package org.headhouse.linter.run;

import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * A run over sites that were found.
 *
 * @param base what paths are shown from
 */
public record SiteRun(FoundSites found, BaseFolder base) {

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
      throw new UserError(called.of("threads") + " cannot be " + asked + ": write 1 or more");
    }
    return asked;
  }

  /** Tells what holds for all sites, and what looks as if it did. */
  public void tellSettings(Console console) {
    settings().tell(found.sites(), console);
  }

  /**
   * A linter with what holds for all sites.
   *
   * @param threads the most; more than files would be started for nothing
   */
  public SiteLinter.Builder builder(int threads) {
    return settings()
        .builder()
        .threads(Math.max(1, Math.min(threads, found.files().size())))
        .shownFrom(base.path());
  }

  private SharedSettings settings() {
    return new SharedSettings(found.settings(), base);
  }

  /** The files as they are read and shown. */
  public List<SiteInput> inputs() {
    return inputs(found.files(), base);
  }

  /** The same, each made when its turn comes. */
  public Stream<SiteInput> stream() {
    return found.files().stream().map(file -> input(file, base.shown(file.path())));
  }

  /** Files as they are read and shown; reading one that was refused tells why. */
  public static List<SiteInput> inputs(List<FoundFile> files, BaseFolder base) {
    return files.stream().map(file -> input(file, base.shown(file.path()))).toList();
  }

  private static SiteInput input(FoundFile file, String shown) {
    return file.refused() == null
        ? SiteInput.file(file.path(), shown)
        : new SiteInput(
            shown,
            most -> {
              throw file.refused();
            });
  }
}
