package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A line on which steps are played. It knows nothing of how a plan is made: cables have two ends,
 * and after each step they must lead through all items, past two terminators on each segment.
 */
final class LiveLine {
  private final Map<String, Integer> answering = new LinkedHashMap<>();
  private final Map<String, Integer> prepared = new HashMap<>();
  private final Map<String, String> onward = new HashMap<>();
  private final Map<String, String> backward = new HashMap<>();
  private final Map<String, Map<String, Boolean>> terminators = new HashMap<>();
  private final Set<String> repeaters = new HashSet<>();
  private final Set<String> opened = new HashSet<>();
  private final String head;
  private @Nullable String aside;
  private int addressesSet;

  LiveLine(List<States.Item> chain) {
    head = chain.get(0).name();
    for (int i = 0; i < chain.size(); i++) {
      States.Item item = chain.get(i);
      boolean end = i == 0 || i + 1 == chain.size();
      if (item.isRepeater()) {
        repeaters.add(item.name());
        terminators.put(item.name(), new HashMap<>(Map.of("in", true, "out", true)));
      } else {
        answering.put(item.name(), item.address());
        terminators.put(item.name(), new HashMap<>(Map.of("", end)));
      }
      if (i > 0) {
        onward.put(chain.get(i - 1).name(), item.name());
        backward.put(item.name(), chain.get(i - 1).name());
      }
    }
    isWhole();
  }

  /** New repeaters cannot be told from units by what is done at them. */
  void play(List<Step> steps, Set<String> newRepeaters) {
    repeaters.addAll(newRepeaters);
    for (Step step : steps) {
      play(step);
      assertThat(answering.values()).as("addresses after %s", step).doesNotHaveDuplicates();
      isWhole();
    }
    assertThat(aside).isNull();
  }

  private void play(Step step) {
    if (step instanceof Step.Prepare prepare) {
      assertThat(onward).doesNotContainKey(prepare.unit());
      assertThat(backward).doesNotContainKey(prepare.unit());
      prepared.put(prepare.unit(), prepare.address());
    } else if (step instanceof Step.SwitchOff off) {
      assertThat(answering.remove(off.unit())).isEqualTo(off.address());
    } else if (step instanceof Step.SetAddress set) {
      addressesSet++;
      assertThat(answering.put(set.unit(), set.to())).isEqualTo(set.from());
      assertThat(set.to()).isNotEqualTo(set.from());
    } else if (step instanceof Step.SetAside set) {
      assertThat(answering.remove(set.unit())).isEqualTo(set.from());
      prepared.put(set.unit(), set.to());
      aside = set.unit();
    } else if (step instanceof Step.BringBack back) {
      assertThat(aside).isEqualTo(back.unit());
      assertThat(prepared.get(back.unit())).isEqualTo(back.address());
      answering.put(back.unit(), back.address());
      aside = null;
    } else if (step instanceof Step.Wire wire) {
      wire.places().forEach(this::work);
    }
  }

  private void work(WiringPlace place) {
    String item = place.item();
    if (!place.actions().stream().allMatch(FieldAction.Replace.class::isInstance)) {
      assertThat(opened.add(item)).as("%s is opened once", item).isTrue();
    }
    for (FieldAction act : place.actions()) {
      if (act instanceof FieldAction.TakeOff off) {
        assertThat((off.onward() ? onward : backward).remove(item)).isEqualTo(off.other());
      } else if (act instanceof FieldAction.Land land) {
        assertThat((land.onward() ? onward : backward).put(item, land.other())).isNull();
      } else if (act instanceof FieldAction.Terminate terminate) {
        ValueChange change = terminate.termination();
        String side = change.what().replaceAll("termination ?", "");
        boolean fitted =
            Boolean.TRUE.equals(
                terminators
                    .computeIfAbsent(item, name -> new HashMap<>())
                    .put(side, PieceOfWiring.isNone(change.to()) ? false : true));
        assertThat(fitted).isEqualTo(!PieceOfWiring.isNone(change.from()));
      } else if (act instanceof FieldAction.TakeOut) {
        answering.remove(item);
        terminators.remove(item);
      } else if (act instanceof FieldAction.SwitchOn on) {
        assertThat(prepared.get(item)).as("%s was set before", item).isEqualTo(on.address());
        assertThat(answering.put(item, on.address())).isNull();
      }
    }
  }

  /** One chain through all cables, each with both ends landed, and two terminators a segment. */
  private void isWhole() {
    List<String> walked = chain();
    Set<String> cabled = new HashSet<>(onward.keySet());
    cabled.addAll(backward.keySet());
    cabled.addAll(onward.values());
    cabled.addAll(backward.values());
    assertThat(walked).containsAll(cabled);
    int fitted = 0;
    for (int i = 0; i < walked.size(); i++) {
      String item = walked.get(i);
      if (repeaters.contains(item)) {
        fitted += fitted(item, "in");
        assertThat(fitted).as("terminators before %s in %s", item, walked).isEqualTo(2);
        fitted = fitted(item, "out");
      } else {
        fitted += fitted(item, "");
      }
    }
    assertThat(fitted).as("terminators at the end of %s", walked).isEqualTo(2);
  }

  private int fitted(String item, String side) {
    return terminators.getOrDefault(item, Map.of()).getOrDefault(side, false) ? 1 : 0;
  }

  /** From the head unit on. */
  List<String> chain() {
    List<String> walked = new ArrayList<>();
    for (String at = head; at != null; at = onward.get(at)) {
      assertThat(walked).as("no ring").doesNotContain(at);
      if (!walked.isEmpty()) {
        assertThat(backward.get(at)).isEqualTo(walked.get(walked.size() - 1));
      }
      walked.add(at);
    }
    return walked;
  }

  Map<String, Integer> answering() {
    return answering;
  }

  int addressesSet() {
    return addressesSet;
  }
}
