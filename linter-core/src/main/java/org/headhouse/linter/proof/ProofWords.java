package org.headhouse.linter.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.proof.Proof.Kind;

/** Names proofs in messages. */
public final class ProofWords {
  private ProofWords() {}

  /** {@code the outdoor readings at "A", "B"; the pair resistance and the idle voltage at "A"}. */
  public static String of(Collection<Proof> proofs) {
    Map<List<String>, List<String>> kinds = new LinkedHashMap<>();
    for (Kind kind : Kind.values()) {
      List<String> places =
          proofs.stream().filter(one -> one.kind() == kind).map(Proof::place).distinct().toList();
      if (!places.isEmpty()) {
        kinds.computeIfAbsent(places, it -> new ArrayList<>()).add(kind.words());
      }
    }
    List<String> parts = new ArrayList<>();
    kinds.forEach((places, words) -> parts.add(listed(words) + " at " + String.join(", ", places)));
    return String.join("; ", parts);
  }

  private static String listed(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
