package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Site;

/**
 * The record that is in the file, as the sheets show it before the next proof.
 *
 * @param visits in the order of the file
 * @param unproved what it has to prove and does not, in words and joined; empty where it proves all
 *     of it
 */
record RecordFacts(List<ProofRow> visits, String unproved) {
  private static final RecordFacts NONE = new RecordFacts(List.of(), "");

  RecordFacts {
    visits = List.copyOf(visits);
  }

  static RecordFacts of(Site site) {
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning == null) {
      return NONE;
    }
    List<String> unproved = new ArrayList<>();
    for (Proof proof : CertificateVerdict.unproved(site, commissioning)) {
      unproved.add(
          proof.kind().words()
              + " at "
              + PlainText.name(proof.at())
              + (proof.side() == null ? "" : ", side " + proof.side().word()));
    }
    return new RecordFacts(ProofRow.of(site, ProofHistory.UNKNOWN), String.join("; ", unproved));
  }
}
