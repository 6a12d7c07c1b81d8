package org.headhouse.linter.rules.segment;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * A segment whose voltages can be judged: all that they are computed from is known, and no mistake
 * with a result of its own distorts them.
 */
public record ComputedSegment(SegmentLine line, SegmentNetwork network) {

  /** A rule on computed figures, which yields to what hides or distorts them. */
  public static RuleDescriptor yielding(RuleDescriptor rule) {
    return rule.yieldingTo(
        "termination.undeclared",
        "termination.mid-line",
        "cable.length-unknown",
        "cable.too-long",
        "segment.overloaded",
        "bias.several");
  }

  /** The segments of a site that can be judged. */
  public static List<ComputedSegment> of(LineFigures figures) {
    List<ComputedSegment> segments = new ArrayList<>();
    for (SegmentLine line : figures.segments()) {
      ComputedSegment segment = of(line);
      if (segment != null) {
        segments.add(segment);
      }
    }
    return segments;
  }

  /** The segment, or null where it cannot be judged. */
  public static @Nullable ComputedSegment of(SegmentLine line) {
    SegmentNetwork network = line.hasFaultThatDistortsFigures() ? null : line.network();
    return network == null ? null : new ComputedSegment(line, network);
  }

  /** The circuit as it is written. */
  public SegmentCircuit circuit() {
    return network.circuit();
  }

  /** The figures of the segment as it is written. */
  public SegmentFigures figures() {
    return network.figures();
  }

  /** A voltage that is under the threshold as written is an error, any other less. */
  public static Finding atLevelOf(double nominalVolts, Finding finding) {
    return nominalVolts < Levels.RECEIVER_THRESHOLD_VOLTS ? finding : finding.at(Level.WARNING);
  }
}
