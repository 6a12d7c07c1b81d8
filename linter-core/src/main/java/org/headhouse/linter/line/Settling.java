package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * How long the edges of a segment ring, at most.
 *
 * @param seconds from the moment at which an edge begins to arrive at a receiver until that
 *     receiver stays past its threshold; infinite where a receiver gets no more than it needs
 * @param worst the sender and the receiver of which that is so; null where only the quick bound is
 *     known
 */
@Internal
public record Settling(double seconds, @Nullable Pair worst) {
  static final Settling NEVER = new Settling(Double.POSITIVE_INFINITY, null);

  /** An edge is followed in so many steps at least, and a segment is passed in. */
  private static final int STEPS_OF_EDGE = 8;

  private static final int STEPS_OF_SEGMENT = 50;

  /** A segment that is short beside the edge hardly rings. */
  private static final int MOST_STEPS_OF_EDGE = 64;

  /** More is no line, but a file can have it: some 1000 km. */
  private static final double MOST_STEPS_OF_LINES = 1e6;

  /** The indices of two items in their segment. */
  public record Pair(int sender, int receiver) {}

  /**
   * A bound that costs next to nothing, O(n), and is some times too long: see {@link RingEnergy}.
   *
   * @return from the beginning of an edge until every receiver stays past its threshold, in
   *     seconds; infinite where a receiver gets no more than it needs, or the cable has no
   *     resistance
   */
  public static double quickSeconds(RingingLine line) {
    return RingEnergy.seconds(line);
  }

  /**
   * The closer bound: every sender's edge is followed through all reflections until the energy that
   * is left can lift no receiver over its threshold again. Where that is more than the work that
   * may be spent, for which some hundreds of items and a slow decay have to come together, it is
   * the quick bound.
   *
   * @param work how many nodes times steps may be spent
   */
  public static Settling of(RingingLine line, double work) {
    double quick = quickSeconds(line);
    double stepSeconds = stepSeconds(line);
    if (line.cableMetres() / line.metresPerSecond() / stepSeconds > MOST_STEPS_OF_LINES) {
      return new Settling(quick, null);
    }
    Settling followed =
        new EdgeRings(WaveNetwork.of(line, stepSeconds))
            .longest((int) Math.ceil(quick / stepSeconds), work);
    return followed != null && followed.seconds() < quick ? followed : new Settling(quick, null);
  }

  static double stepSeconds(RingingLine line) {
    double edge = line.followedEdgeSeconds();
    double passing = line.circuit().lengthMetres() / line.metresPerSecond();
    double wanted = Math.min(edge / STEPS_OF_EDGE, passing / STEPS_OF_SEGMENT);
    return Math.max(wanted, edge / MOST_STEPS_OF_EDGE);
  }
}
