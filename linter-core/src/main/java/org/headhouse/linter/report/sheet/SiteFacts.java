package org.headhouse.linter.report.sheet;

import java.util.List;
import java.util.Map;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.proof.WholeLineProof;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Site;

/**
 * The input of the sheets of one site.
 *
 * @param results of the file, suppressed ones included
 * @param bypasses how the line runs on without one of its units, by the places of the units in the
 *     chain
 * @param proof when the whole line was last proved, and is due again
 */
public record SiteFacts(
    Site site,
    LineFigures figures,
    List<Result> results,
    Provenance provenance,
    Map<Integer, Bypass> bypasses,
    Drawings drawings,
    BillOfMaterials materials,
    WholeLineProof proof) {

  public SiteFacts {
    results = List.copyOf(results);
    bypasses = Map.copyOf(bypasses);
  }

  /** The same with other results, and drawings that show them. */
  public SiteFacts with(List<Result> others, Drawings drawn) {
    return new SiteFacts(site, figures, others, provenance, bypasses, drawn, materials, proof);
  }

  /** Identifies the content of the file. */
  String revision() {
    return provenance.shortFingerprint();
  }
}
