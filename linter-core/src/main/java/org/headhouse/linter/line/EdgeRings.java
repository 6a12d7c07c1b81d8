package org.headhouse.linter.line;

import org.jspecify.annotations.Nullable;

/** Follows the edge of every sender until all receivers have settled. */
final class EdgeRings {
  /**
   * How much of what a receiver has over its need an edge may still be away. The rest is for what
   * earlier edges leave, which have rung for a bit longer, and for the rounding to steps.
   */
  static final double SHARE_OF_HEADROOM = 0.75;

  /** An edge leads from one state to the other. */
  private static final double SWING_VOLTS = 2 * Levels.DRIVER_VOLTS;

  /** Between two looks at the energy that is left. */
  private static final int STEPS_BETWEEN_LOOKS = 16;

  /** A front may come a step early, and the last step counts as a whole. */
  private static final int STEPS_OF_ROUNDING = 2;

  private final RingingLine line;
  private final WaveNetwork network;
  private final WaveRun run;
  private final double workOfStep;
  private double workLeft;

  EdgeRings(WaveNetwork network) {
    this.line = network.segment();
    this.network = network;
    this.run = new WaveRun(network);
    this.workOfStep = network.nodes() + (double) network.stepsOfLines() / STEPS_BETWEEN_LOOKS;
  }

  /**
   * The longest of all senders and receivers.
   *
   * @param limitSteps after which settling is proved
   * @param work how many nodes times steps may be spent
   * @return null where that is not enough
   */
  @Nullable Settling longest(int limitSteps, double work) {
    Settling longest = new Settling(0, null);
    workLeft = work;
    for (int sender = 0; sender < line.branches().size(); sender++) {
      Settling one = of(sender, limitSteps);
      if (workLeft < 0) {
        return null;
      }
      longest = one.seconds() > longest.seconds() ? one : longest;
    }
    return longest;
  }

  private Settling of(int sender, int limitSteps) {
    int root = network.nodeOf(sender);
    SteadyTree tree = new SteadyTree(network, root);
    double[] allowed = allowed(tree, sender);
    double least = Double.POSITIVE_INFINITY;
    for (double one : allowed) {
      least = Math.min(least, one);
    }
    if (least <= 0) {
      return Settling.NEVER;
    }
    run.begin(tree.state(1, 1, false));
    int[] last = new int[allowed.length];
    int step = 1;
    while (step <= limitSteps && workLeft >= 0 && !isOver(step, least)) {
      workLeft -= workOfStep;
      double passed = step * network.stepSeconds() / line.followedEdgeSeconds();
      run.advance(root, -Math.max(0, 1 - passed));
      for (int item = 0; item < allowed.length; item++) {
        if (-run.difference(network.nodeOf(item)) > allowed[item]) {
          last[item] = step;
        }
      }
      step++;
    }
    return longest(sender, last, tree);
  }

  private boolean isOver(int step, double least) {
    boolean still = (step - 2) * network.stepSeconds() > line.followedEdgeSeconds();
    return still && step % STEPS_BETWEEN_LOOKS == 0 && run.mostVolts() <= least;
  }

  private Settling longest(int sender, int[] last, SteadyTree tree) {
    int steps = Integer.MIN_VALUE;
    int receiver = sender;
    for (int item = 0; item < last.length; item++) {
      int after = last[item] - tree.stepsTo(network.nodeOf(item));
      if (item != sender && after > steps) {
        steps = after;
        receiver = item;
      }
    }
    double seconds =
        (Math.max(0, steps) + STEPS_OF_ROUNDING) * network.stepSeconds() + line.spreadSeconds();
    return new Settling(seconds, new Settling.Pair(sender, receiver));
  }

  /** How far each item may be away; the sender as far as it likes. */
  private double[] allowed(SteadyTree tree, int sender) {
    double scale =
        line.leastLoopOhmsPerMetre() > 0
            ? line.greatestLoopOhmsPerMetre() / line.leastLoopOhmsPerMetre()
            : 1;
    SteadyTree.State warmest = tree.state(-Levels.DRIVER_VOLTS, scale, true);
    double[] allowed = new double[line.branches().size()];
    for (int item = 0; item < allowed.length; item++) {
      double headroom = -warmest.volts(network.nodeOf(item)) - line.wantedVolts();
      allowed[item] =
          item == sender ? Double.POSITIVE_INFINITY : SHARE_OF_HEADROOM * headroom / SWING_VOLTS;
    }
    return allowed;
  }
}
