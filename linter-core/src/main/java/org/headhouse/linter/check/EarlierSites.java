package org.headhouse.linter.check;

import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/** The sites of an earlier state of the repository. Safe for use by several threads. */
@FunctionalInterface
public interface EarlierSites {
  /** No earlier state is known. */
  EarlierSites NONE = later -> null;

  /** The earlier state of a site, or null where it was not there or cannot be read. */
  @Nullable Site of(Site later);
}
