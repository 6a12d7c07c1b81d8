package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.SuppressionEntry;

/**
 * What somebody accepted on purpose, and what it hides is there.
 *
 * @param requirement what is not kept
 * @param where the unit; empty for the whole site
 * @param reason in the words of who accepted it
 * @param until the last day; empty where it has no end
 */
record AcceptedException(String requirement, String where, String reason, String until) {

  /** In the order of the file; one whose last day is over is none. */
  static List<AcceptedException> of(SiteFacts facts, SheetSettings settings) {
    Set<String> rules = new HashSet<>();
    for (Result result : facts.results()) {
      if (result.suppressed()) {
        rules.add(result.rule());
      }
    }
    List<AcceptedException> exceptions = new ArrayList<>();
    for (SuppressionEntry entry : facts.site().suppressions()) {
      LocalDate until = entry.until().orNull();
      boolean over = until != null && until.isBefore(settings.date());
      String rule = entry.rule().or("");
      if (!over && rules.contains(rule)) {
        exceptions.add(
            new AcceptedException(
                settings.requirements().getOrDefault(rule, "A rule of the line."),
                PlainText.name(entry.unit().or("")),
                PlainText.sentence(entry.justification().or("")),
                until == null ? "" : SpokenText.day(until)));
      }
    }
    return exceptions;
  }
}
