package org.headhouse.linter.baseline;

import java.util.List;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Result;

/**
 * Results compared with a baseline.
 *
 * @param results all that were given, in their order, each with its state
 * @param absent what the baseline has and the check did not find, in the order of the baseline
 */
public record ComparedResults(List<Result> results, List<AbsentResult> absent) {
  public ComparedResults {
    results = List.copyOf(results);
    absent = List.copyOf(absent);
  }
}
