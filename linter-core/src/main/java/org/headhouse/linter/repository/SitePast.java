package org.headhouse.linter.repository;

import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** What the files of a repository were at any time. Safe for use by several threads. */
@Internal
public interface SitePast {
  /** Nothing is known, as where there is no history. */
  SitePast UNKNOWN =
      new SitePast() {
        @Override
        public @Nullable Site proved(String path) {
          return null;
        }

        @Override
        public boolean mayHaveBeenLive(String path) {
          return false;
        }
      };

  /**
   * The last commissioned state of a file, at the state of the repository or before it; null where
   * none is known.
   *
   * @param path as results show it
   */
  @Nullable Site proved(String path);

  /**
   * Whether any state of a file shows that its line was in operation, or cannot be looked at.
   *
   * @param path as results show it
   */
  boolean mayHaveBeenLive(String path);
}
