package org.headhouse.linter.check;

import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * What came of one file, and what it was read as.
 *
 * @param site null where the file could not be read that far
 */
public record ExaminedFile(FileOutcome outcome, @Nullable ReadSite site) {

  /** A site with its figures; as they are, for one thread at a time. */
  public record ReadSite(Site site, LineFigures figures) {}
}
