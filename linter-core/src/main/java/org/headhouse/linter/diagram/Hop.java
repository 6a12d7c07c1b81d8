package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.SurgeProtection;
import org.jspecify.annotations.Nullable;

/**
 * The cable from one item to the next.
 *
 * @param length in words
 * @param outdoors whether it runs between buildings
 * @param arrested whether it has surge protection at both ends
 * @param mark what is wrong with it, or null
 * @param room for what is written beside it
 */
record Hop(String length, boolean outdoors, boolean arrested, @Nullable Mark mark, double room) {

  private static final int MOST_LINES = 3;

  static Hop behind(ChainItem item, Measure measure, @Nullable Mark mark, double cardWidth) {
    return new Hop(
        length(item, measure),
        item.runToNext().is(Run.BETWEEN_BUILDINGS),
        item.surgeProtectionToNext().is(SurgeProtection.FITTED),
        mark,
        cardWidth + CardWidth.BETWEEN - Stop.BETWEEN_LEGS);
  }

  private static String length(ChainItem item, Measure measure) {
    Length length = item.cableToNext().orNull();
    return length == null ? "length not known" : measure.length(length.metres());
  }

  /** What is written beside it between two items of a row, each on its own line. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (String one : words()) {
      double sign = mark != null && lines.isEmpty() ? Part.Sign.WIDTH + Part.Sign.GAP : 0;
      lines.addAll(Lettering.wrap(one, room - sign, TextStyle.SMALL, MOST_LINES));
    }
    return lines;
  }

  /** What is written beside it. */
  List<String> words() {
    return Stream.of(length, outdoors ? "between buildings" : "", protection())
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private String protection() {
    if (arrested) {
      return "surge protection";
    }
    return outdoors ? "no surge protection" : "";
  }

  Part.Wire.Kind kind() {
    return outdoors ? Part.Wire.Kind.OUTDOOR_CABLE : Part.Wire.Kind.CABLE;
  }
}
