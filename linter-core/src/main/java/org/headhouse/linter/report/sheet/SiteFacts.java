package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Site;

/**
 * What the sheets of one site are made of.
 *
 * @param revision tells the content of the file from any other
 * @param results of the file, those accepted on purpose included
 */
public record SiteFacts(
    Site site, LineFigures figures, List<Result> results, String revision, Drawings drawings) {

  public SiteFacts {
    results = List.copyOf(results);
  }
}
