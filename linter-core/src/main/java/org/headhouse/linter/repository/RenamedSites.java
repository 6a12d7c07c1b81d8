package org.headhouse.linter.repository;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds sites again whose id and file are both new, as git finds renamed files: those that are most
 * alike belong together, if they are alike by half.
 */
final class RenamedSites {
  private static final double LEAST_LIKENESS = 0.5;

  /** To compare more takes longer than anybody waits; a site that is not found again is gone. */
  private static final int MOST_COMPARISONS = 250_000;

  private RenamedSites() {}

  private record Pair<E, L>(E earlier, L later, double likeness) {}

  /** The earlier site of each later one that is found, each once. */
  static <E, L> Map<L, E> of(
      List<E> earlier,
      List<L> later,
      Function<E, SiteLikeness> ofEarlier,
      Function<L, SiteLikeness> ofLater) {
    if ((long) earlier.size() * later.size() > MOST_COMPARISONS) {
      return Map.of();
    }
    Map<L, E> found = new HashMap<>();
    Set<E> taken = new HashSet<>();
    for (Pair<E, L> pair : likely(earlier, later, ofEarlier, ofLater)) {
      if (!taken.contains(pair.earlier()) && !found.containsKey(pair.later())) {
        taken.add(pair.earlier());
        found.put(pair.later(), pair.earlier());
      }
    }
    return found;
  }

  /** The likeliest first; of equal ones in the order of the lists. */
  private static <E, L> List<Pair<E, L>> likely(
      List<E> earlier,
      List<L> later,
      Function<E, SiteLikeness> ofEarlier,
      Function<L, SiteLikeness> ofLater) {
    List<SiteLikeness> known = earlier.stream().map(ofEarlier).toList();
    List<Pair<E, L>> likely = new ArrayList<>();
    for (L one : later) {
      SiteLikeness likeness = known.isEmpty() ? null : ofLater.apply(one);
      for (int i = 0; likeness != null && i < known.size(); i++) {
        double share = known.get(i).to(likeness);
        if (share >= LEAST_LIKENESS) {
          likely.add(new Pair<>(earlier.get(i), one, share));
        }
      }
    }
    likely.sort(Comparator.comparingDouble((Pair<E, L> pair) -> pair.likeness()).reversed());
    return likely;
  }
}
