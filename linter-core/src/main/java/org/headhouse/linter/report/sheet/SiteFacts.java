package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.proof.WholeLineProof;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Site;

/**
 * The input of the sheets of one site.
 *
 * @param revision identifies the content of the file
 * @param results of the file, suppressed ones included
 * @param proof when the whole line was last proved, and is due again
 */
public record SiteFacts(
    Site site,
    LineFigures figures,
    List<Result> results,
    String revision,
    Drawings drawings,
    BillOfMaterials materials,
    WholeLineProof proof) {

  public SiteFacts {
    results = List.copyOf(results);
  }
}
