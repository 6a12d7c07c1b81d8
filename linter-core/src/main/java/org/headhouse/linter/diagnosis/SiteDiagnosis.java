package org.headhouse.linter.diagnosis;

import java.util.List;

/**
 * What the readings say of one site's line.
 *
 * @param site its id, or the path of its file where it has none
 * @param segments from the head unit on
 * @param hasReadings whether the site has any; without them all faults are left
 * @param notUsed readings that belong to no place of the line, and why
 */
public record SiteDiagnosis(
    String site, List<SegmentDiagnosis> segments, boolean hasReadings, List<String> notUsed) {

  public SiteDiagnosis {
    segments = List.copyOf(segments);
    notUsed = List.copyOf(notUsed);
  }
}
