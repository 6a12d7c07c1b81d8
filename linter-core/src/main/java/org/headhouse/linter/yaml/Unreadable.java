package org.headhouse.linter.yaml;

import org.headhouse.linter.result.Finding;

/** Ends the reading of a document that cannot or must not be read to its end. */
final class Unreadable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Finding finding;

  Unreadable(Finding finding) {
    super(finding.rule(), null, false, false);
    this.finding = finding;
  }

  Finding finding() {
    return finding;
  }
}
