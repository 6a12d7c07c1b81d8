package org.headhouse.linter.diagram;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Converts values to places along an axis whose ticks are round numbers.
 *
 * @param least the value at the start, a multiple of the step
 * @param steps how many steps there are to the end
 * @param start the place of the least value
 * @param end the place of the greatest
 */
record Scale(double least, double step, int steps, double start, double end) {
  private static final double NEARLY = 1e-9;

  /**
   * The scale with the smallest steps (1, 2 or 5 times a power of ten) of which there are at most
   * {@code mostSteps}.
   */
  static Scale over(double least, double greatest, int mostSteps, double start, double end) {
    if (!(greatest > least)) {
      throw new IllegalArgumentException("no scale from " + least + " to " + greatest);
    }
    double decade = Math.pow(10, Math.floor(Math.log10((greatest - least) / mostSteps)));
    for (int power = 0; ; power++) {
      for (int digit : List.of(1, 2, 5)) {
        double step = digit * decade * Math.pow(10, power);
        double low = Math.floor(least / step + NEARLY);
        double high = Math.ceil(greatest / step - NEARLY);
        if (high - low <= mostSteps) {
          return new Scale(low * step, step, (int) (high - low), start, end);
        }
      }
    }
  }

  double at(double value) {
    return start + (value - least) / (step * steps) * (end - start);
  }

  /** The values that are written on the axis. */
  List<Double> ticks() {
    return IntStream.rangeClosed(0, steps).mapToObj(tick -> least + tick * step).toList();
  }
}
