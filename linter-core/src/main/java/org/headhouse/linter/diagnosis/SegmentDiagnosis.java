package org.headhouse.linter.diagnosis;

import java.util.List;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What the readings say of one segment.
 *
 * @param items the names in the order of the chain
 * @param agrees whether the readings fit the line as it is written, which proves no sound line;
 *     null where there is no reading, or where it cannot be judged
 * @param candidates the faults that are left
 * @param excluded how many faults the readings exclude
 * @param next what to measure next; null where no measurement tells the rest apart
 * @param notJudged what the readings cannot be compared with, and why; empty where all is judged
 */
public record SegmentDiagnosis(
    List<String> items,
    @Nullable Boolean agrees,
    List<Candidate> candidates,
    int excluded,
    @Nullable NextMeasurement next,
    List<String> notJudged) {

  @Internal
  public SegmentDiagnosis {
    items = List.copyOf(items);
    candidates = List.copyOf(candidates);
    notJudged = List.copyOf(notJudged);
  }

  /** Whether no single fault, and no sound line, gives the readings. */
  public boolean isUnexplained() {
    return Boolean.FALSE.equals(agrees) && candidates.isEmpty();
  }
}
