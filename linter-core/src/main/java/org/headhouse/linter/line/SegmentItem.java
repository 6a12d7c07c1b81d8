package org.headhouse.linter.line;

import org.jspecify.annotations.Nullable;

/**
 * What one place of the chain connects to the pair.
 *
 * @param name as people call it; need not be unique
 * @param kind what it is
 * @param unitLoads in units of 12 kΩ from each conductor to common
 * @param terminator across the pair, or null
 * @param bias resistors to its supply, or null
 */
public record SegmentItem(
    String name,
    Kind kind,
    double unitLoads,
    @Nullable Terminator terminator,
    @Nullable BiasResistors bias) {

  /** What an item is. All kinds load the line, receive and send. */
  public enum Kind {
    /** A controller. */
    UNIT,
    /** One side of a repeater. */
    REPEATER_SIDE,
    /** Another device on the pair. */
    EQUIPMENT,
    /** The interface of supervising software. */
    CONVERTER
  }

  /** Common practice, no source: a repeater's side is one more receiver of the full load. */
  private static final double REPEATER_SIDE_UNIT_LOADS = 1;

  public SegmentItem {
    Require.notNegative(unitLoads, "unit loads");
  }

  /** A controller. */
  public static SegmentItem unit(
      String name,
      double unitLoads,
      @Nullable Terminator terminator,
      @Nullable BiasResistors bias) {
    return new SegmentItem(name, Kind.UNIT, unitLoads, terminator, bias);
  }

  /** The side of a repeater in this segment: one unit load. */
  public static SegmentItem repeaterSide(
      String name, @Nullable Terminator terminator, @Nullable BiasResistors bias) {
    return new SegmentItem(name, Kind.REPEATER_SIDE, REPEATER_SIDE_UNIT_LOADS, terminator, bias);
  }

  /** The side of a repeater in this segment, of a load that is written. */
  public static SegmentItem repeaterSide(
      String name,
      double unitLoads,
      @Nullable Terminator terminator,
      @Nullable BiasResistors bias) {
    return new SegmentItem(name, Kind.REPEATER_SIDE, unitLoads, terminator, bias);
  }

  /** Another device on the pair. */
  public static SegmentItem equipment(
      String name,
      double unitLoads,
      @Nullable Terminator terminator,
      @Nullable BiasResistors bias) {
    return new SegmentItem(name, Kind.EQUIPMENT, unitLoads, terminator, bias);
  }

  /** The interface of supervising software. */
  public static SegmentItem converter(
      String name,
      double unitLoads,
      @Nullable Terminator terminator,
      @Nullable BiasResistors bias) {
    return new SegmentItem(name, Kind.CONVERTER, unitLoads, terminator, bias);
  }

  /** Whether this is a controller. */
  public boolean isUnit() {
    return kind == Kind.UNIT;
  }

  SegmentItem with(@Nullable Terminator otherTerminator, @Nullable BiasResistors otherBias) {
    return new SegmentItem(name, kind, unitLoads, otherTerminator, otherBias);
  }

  SegmentItem withUnitLoads(double other) {
    return new SegmentItem(name, kind, other, terminator, bias);
  }

  /** The conductance of the load from each conductor to common. */
  double loadSiemens() {
    return unitLoads / Levels.UNIT_LOAD_OHMS;
  }

  double biasSiemens() {
    return bias == null ? 0 : bias.siemens();
  }

  double biasAmperes() {
    return bias == null ? 0 : bias.sourceAmperes();
  }

  double steadyTerminatorSiemens() {
    return terminator == null ? 0 : terminator.steadySiemens();
  }

  double signalTerminatorSiemens() {
    return terminator == null ? 0 : terminator.signalSiemens();
  }
}
