package org.headhouse.linter.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.headhouse.linter.proof.Proof.Kind;

/** Names proofs in messages. */
public final class ProofWords {
  private ProofWords() {}

  /** {@code the outdoor readings at "A", "B"; the pair resistance at "A"}. */
  public static String of(Collection<Proof> proofs) {
    List<String> parts = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      List<String> places =
          proofs.stream().filter(one -> one.kind() == kind).map(Proof::place).distinct().toList();
      if (!places.isEmpty()) {
        parts.add(kind.words() + " at " + String.join(", ", places));
      }
    }
    return String.join("; ", parts);
  }
}
