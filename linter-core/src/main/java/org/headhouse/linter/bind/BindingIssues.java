package org.headhouse.linter.bind;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Place;

/** Collects what one binding meets. */
final class BindingIssues {
  private final boolean seesMisspelt;
  private boolean needsSchemaCheck;
  private final List<Finding> findings = new ArrayList<>();

  BindingIssues() {
    this(false);
  }

  /**
   * @param seesMisspelt whether what stands under a key that is spelt like a known one is not
   *     missing, but not understood
   */
  BindingIssues(boolean seesMisspelt) {
    this.seesMisspelt = seesMisspelt;
  }

  boolean seesMisspelt() {
    return seesMisspelt;
  }

  /** Something is there that the schema refuses, and that the schema is asked to report. */
  void askSchema() {
    needsSchemaCheck = true;
  }

  /** Something is there that only this stage can refuse. */
  void report(String rule, Place place, Message message) {
    report(Finding.of(rule, place, message));
  }

  void report(Finding finding) {
    // What is wrong in a default is reported where it is written, and not for each that takes it.
    if (!(finding.place() instanceof Place.ThroughDefault)) {
      findings.add(finding);
    }
  }

  <T> Bound<T> bound(T model) {
    return new Bound<>(model, needsSchemaCheck, List.copyOf(findings));
  }
}
