package org.headhouse.linter.change;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The order in which units are visited: from the head unit on, always to the nearest one at which
 * something can be done, and onward rather than back.
 */
final class VisitOrder {
  private VisitOrder() {}

  /**
   * @param sequences each in an order that has to be kept
   * @param place where on the chain a thing is done
   */
  static <T> List<T> along(List<List<T>> sequences, ToIntFunction<T> place) {
    List<Deque<T>> waiting = new ArrayList<>();
    sequences.stream()
        .filter(sequence -> !sequence.isEmpty())
        .forEach(sequence -> waiting.add(new ArrayDeque<>(sequence)));
    List<T> walked = new ArrayList<>();
    int here = 0;
    while (!waiting.isEmpty()) {
      int at = here;
      Deque<T> next =
          waiting.stream()
              .min(
                  Comparator.comparing(
                          (Deque<T> queue) -> Math.abs(place.applyAsInt(queue.element()) - at))
                      .thenComparing(queue -> -place.applyAsInt(queue.element())))
              .orElseThrow();
      T thing = next.remove();
      walked.add(thing);
      here = place.applyAsInt(thing);
      waiting.removeIf(Deque::isEmpty);
    }
    return walked;
  }
}
