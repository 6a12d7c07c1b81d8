package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.ChainItem;

/** The rules that each unit breaks, so that nobody wires or sets up what is still wrong. */
final class Attention {
  private static final Set<String> WIRING =
      Set.of(
          "bias",
          "cable",
          "conductors",
          "module",
          "run",
          "segment",
          "signal",
          "stub",
          "termination");

  private final Map<String, Set<String>> rules = new HashMap<>();

  Attention(List<Result> results) {
    for (Result result : results) {
      String unit = result.unit();
      if (unit != null && !result.suppressed()) {
        rules.computeIfAbsent(unit, name -> new TreeSet<>()).add(result.rule());
      }
    }
  }

  /** The rules about wiring that an item breaks. */
  List<String> wiring(ChainItem item) {
    return of(item, true);
  }

  /** The rules about settings that an item breaks. */
  List<String> settings(ChainItem item) {
    return of(item, false);
  }

  private List<String> of(ChainItem item, boolean wiring) {
    List<String> some = new ArrayList<>();
    for (String rule : rules.getOrDefault(item.name().or(""), Set.of())) {
      if (WIRING.contains(rule.substring(0, Math.max(0, rule.indexOf('.')))) == wiring) {
        some.add(rule);
      }
    }
    return List.copyOf(some);
  }
}
