package org.headhouse.linter.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.proof.Proof.Kind;

/** Names proofs in messages. */
public final class ProofWords {
  /** Ends a remedy that adds to a record, which is of one day. */
  public static final String UNDER_RENEWED = " (under renewed if the record has an earlier day)";

  /** What can be read as a headline. */
  private static final int LONGEST_FACT = 100;

  private ProofWords() {}

  /**
   * A fact that names them where that is short, else says how many they are: {@code 12 proofs at 6
   * items}.
   *
   * @param start what the fact begins with
   */
  public static String fact(String start, Collection<Proof> proofs) {
    return start + (isShort(start, proofs) ? of(proofs) : counted(proofs));
  }

  /**
   * What the remedy of such a fact is about: {@code it}, or all of them where the fact only counts
   * them.
   */
  public static String remedied(String start, Collection<Proof> proofs) {
    return isShort(start, proofs) ? "it" : of(proofs);
  }

  /** One item is named whatever it is called. */
  private static boolean isShort(String start, Collection<Proof> proofs) {
    return proofs.stream().map(Proof::place).distinct().count() == 1
        || start.length() + of(proofs).length() <= LONGEST_FACT;
  }

  private static String counted(Collection<Proof> proofs) {
    long items = proofs.stream().map(Proof::at).distinct().count();
    return proofs.size() + " proofs at " + (items == 1 ? "one item" : items + " items");
  }

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
