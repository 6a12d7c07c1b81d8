package org.headhouse.linter.report.sheet;

/**
 * Which state of a file a page is about, and how far it was looked at.
 *
 * @param fingerprint the SHA-256 of the file: 64 lower-case hexadecimal digits
 * @param fullyChecked whether every rule that is on could run
 */
public record Provenance(String fingerprint, boolean fullyChecked, ProofHistory history) {
  private static final int SHORT_DIGITS = 12;

  /** As much of the fingerprint as tells the states of one file apart. */
  String shortFingerprint() {
    return fingerprint.substring(0, SHORT_DIGITS);
  }

  /** What identifies the state of the file: the revision that has it, else its fingerprint. */
  Fact state() {
    return history.revision().isEmpty()
        ? new Fact("File fingerprint (SHA-256)", shortFingerprint())
        : new Fact("Revision", history.revision());
  }
}
