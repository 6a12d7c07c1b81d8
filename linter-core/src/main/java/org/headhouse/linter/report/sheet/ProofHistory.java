package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.List;
import org.headhouse.linter.proof.Proof;

/**
 * What the earlier states of a file say of its proofs.
 *
 * @param isKnown whether there is a history
 * @param isWhole whether every earlier state was looked at
 * @param revision that has the file as it is now, or that it was changed since one; empty where
 *     nothing is known
 * @param earlier proofs that the file no longer has, the latest first
 * @param isOutdated whether the line was changed after its record
 * @param unproved what that change touched and nobody proved again; may be empty though it is
 *     outdated
 */
public record ProofHistory(
    boolean isKnown,
    boolean isWhole,
    String revision,
    List<EarlierProof> earlier,
    boolean isOutdated,
    List<Proof> unproved) {

  /** Nothing is known. */
  public static final ProofHistory UNKNOWN =
      new ProofHistory(false, false, "", List.of(), false, List.of());

  public ProofHistory {
    earlier = List.copyOf(earlier);
    unproved = List.copyOf(unproved);
  }

  /**
   * A proof that an earlier state of the file has.
   *
   * @param by who signed it, as it is written
   * @param pairResistance at the head unit, as it is written; empty for none
   * @param idleVoltage at the head unit, as it is written; empty for none
   * @param revision that has it
   */
  public record EarlierProof(
      LocalDate day, String by, String pairResistance, String idleVoltage, String revision) {}
}
