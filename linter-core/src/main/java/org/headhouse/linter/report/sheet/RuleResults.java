package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;

/**
 * The results of one rule.
 *
 * @param rule its id
 * @param requirement its requirement; empty where it is not known
 * @param level the most severe level of its results here
 */
record RuleResults(String rule, String requirement, Level level, List<Entry> entries) {

  /**
   * One result.
   *
   * @param position line and column in the file
   * @param justification why it was accepted; empty where it was not
   */
  record Entry(
      Level level,
      String position,
      String fact,
      String reason,
      String remedy,
      String justification) {}

  RuleResults {
    entries = List.copyOf(entries);
  }

  /** The results by rule, the most severe first. */
  static List<RuleResults> of(
      List<Result> results, boolean accepted, Map<String, String> requirements) {
    Map<String, List<Result>> byRule = new TreeMap<>();
    for (Result result : results) {
      if (result.suppressed() == accepted) {
        byRule.computeIfAbsent(result.rule(), rule -> new ArrayList<>()).add(result);
      }
    }
    List<RuleResults> groups = new ArrayList<>();
    byRule.forEach(
        (rule, ofRule) ->
            groups.add(
                new RuleResults(
                    rule,
                    requirements.getOrDefault(rule, ""),
                    ofRule.stream().map(Result::level).min(Comparator.naturalOrder()).orElseThrow(),
                    ofRule.stream().map(RuleResults::entry).toList())));
    groups.sort(Comparator.comparing(RuleResults::level));
    return List.copyOf(groups);
  }

  private static Entry entry(Result result) {
    var region = result.location().region();
    return new Entry(
        result.level(),
        "line " + region.startLine() + ", column " + region.startColumn(),
        PlainText.sentence(result.message().fact()),
        PlainText.sentence(result.message().reason()),
        PlainText.sentence(result.message().remedy()),
        result.suppression() == null
            ? ""
            : PlainText.sentence(result.suppression().justification()));
  }
}
