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
}
