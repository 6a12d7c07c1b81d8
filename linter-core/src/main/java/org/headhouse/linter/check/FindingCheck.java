package org.headhouse.linter.check;

import java.util.Objects;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;

/** Refuses findings that cannot be reported, while it is known which rule made them. */
final class FindingCheck {
  private FindingCheck() {}

  /**
   * Checks a finding of a rule in a file.
   *
   * @throws IllegalArgumentException where it is another rule's, or has a place that the file does
   *     not have
   * @throws NullPointerException where it is null
   */
  static void require(Finding finding, RuleDescriptor rule, SourceText source) {
    Objects.requireNonNull(finding, "it reported no finding but null");
    if (!finding.rule().equals(rule.id())) {
      throw new IllegalArgumentException("it reported a finding of " + finding.rule());
    }
    requireInside(finding.place(), source);
    for (Finding.Related related : finding.related()) {
      requireInside(related.region(), related.source() == null ? source : related.source());
    }
    if (finding.fix() != null) {
      for (Edit edit : finding.fix().edits()) {
        requireInside(edit.at(), source);
      }
    }
  }

  static void requireInside(Place place, SourceText source) {
    Objects.requireNonNull(place, "it reported no place but null");
    requireInside(place.region(), source);
    Place.Anchored anchored = place.anchored();
    if (anchored != null) {
      requireInside(anchored.anchor(), source);
      requireInside(anchored.value(), source);
    }
  }

  private static void requireInside(Region region, SourceText source) {
    if (!source.has(region)) {
      throw new IllegalArgumentException(
          "it reported line "
              + region.startLine()
              + ", column "
              + region.startColumn()
              + ", which "
              + source.path()
              + " does not have");
    }
  }
}
