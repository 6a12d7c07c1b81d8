package org.headhouse.linter.check;

import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of one file, with the site that was read.
 *
 * @param site null where the file could not be read as a site
 */
public record ExaminedFile(FileOutcome outcome, @Nullable ReadSite site) {

  /** A site with its figures; for one thread at a time. */
  public record ReadSite(Site site, LineFigures figures) {}
}
