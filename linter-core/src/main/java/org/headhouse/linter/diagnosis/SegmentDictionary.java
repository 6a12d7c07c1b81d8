package org.headhouse.linter.diagnosis;

import org.headhouse.linter.fault.Meters;
import org.headhouse.linter.fault.SegmentFaults;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.SitePolicy;
import org.jspecify.annotations.Nullable;

/** Makes the fault dictionary of a segment of the file. */
final class SegmentDictionary {
  private static final double USUAL_IMPEDANCE_OHMS = 120;

  private SegmentDictionary() {}

  /** Null where a part of what it needs is not known. */
  static @Nullable SegmentFaults of(SegmentLine line, LineFigures figures, SitePolicy policy) {
    SegmentNetwork network = figures.knowsPlacesOfBias() ? line.network() : null;
    if (network == null) {
      return null;
    }
    Double impedance = line.impedanceOhms();
    return new SegmentFaults(
        network.spreadOfReadings(),
        impedance == null || impedance <= 0 ? USUAL_IMPEDANCE_OHMS : impedance,
        new Meters(policy.ohmmeter(), policy.voltmeter()));
  }
}
