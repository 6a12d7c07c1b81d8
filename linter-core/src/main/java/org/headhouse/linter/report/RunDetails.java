package org.headhouse.linter.report;

import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a report for other programs says of the run that it comes from.
 *
 * @param paths the names of files
 * @param id which of the runs of a repository it is, the same from run to run, with a slash at its
 *     end ({@code headhouse-linter/range-a/check-sites/}); null where nobody knows
 * @param pages the page of a rule in Markdown, by its id
 */
public record RunDetails(
    RepositoryPaths paths, @Nullable String id, Function<String, Optional<String>> pages) {

  private static final String PREFIX = "headhouse-linter/";

  /** Of a run of which nothing is known. */
  public static RunDetails unknown() {
    return new RunDetails(RepositoryPaths.unknown(), null, id -> Optional.empty());
  }

  /**
   * The id of a run.
   *
   * @param place the module or folder, from the root of the repository; may be empty
   * @param execution what runs there
   */
  public static String id(String place, String execution) {
    return PREFIX + (place.isEmpty() ? "" : place + "/") + execution + "/";
  }
}
