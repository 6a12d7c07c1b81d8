package org.headhouse.linter.diagram;

import java.util.List;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.TextPart;
import org.jspecify.annotations.Nullable;

/**
 * The heading of a diagram. Its cautions are beside it on every page that has it.
 *
 * @param mark of the line as a whole, or null
 */
record Heading(String title, String facts, @Nullable Mark mark) {
  private static final double GAP = 4;
  private static final TextStyle SMALL = TextStyle.SMALL;
  private static final int MOST_LINES = 3;
  private static final int MOST_LINES_OF_A_TITLE = 8;

  private static final String HOW_TO_READ =
      "Read each row from left to right, then the next. Two legs into a box: the cable goes in and"
          + " out at the terminals. A dot with one leg: a stub. Dashed: between buildings.";

  double height(double width) {
    return titles(width).size() * TextStyle.TITLE.line()
        + GAP
        + Math.max(facts(width).size() * TextStyle.NORMAL.line(), mark == null ? 0 : Sign.HEIGHT)
        + lines(HOW_TO_READ, width).size() * SMALL.line()
        + 2 * GAP;
  }

  private List<String> facts(double width) {
    double room = width - (mark == null ? 0 : Sign.WIDTH + GAP);
    return Lettering.wrap(facts, room, TextStyle.NORMAL, MOST_LINES);
  }

  private static List<String> lines(String text, double width) {
    return Lettering.wrap(text, width, SMALL, MOST_LINES);
  }

  private List<String> titles(double width) {
    return Lettering.wrap(title, width, TextStyle.TITLE, MOST_LINES_OF_A_TITLE);
  }

  void place(double width, List<Part> parts) {
    double y = 0;
    for (String line : titles(width)) {
      parts.add(TextPart.shown(line, title, 0, y, width, TextStyle.TITLE, Align.START));
      y += TextStyle.TITLE.line();
    }
    y += GAP;
    double left = 0;
    if (mark != null) {
      parts.add(Sign.at(0, y, mark));
      left = Sign.WIDTH + GAP;
    }
    double factsTop = y;
    for (String line : facts(width)) {
      parts.add(TextPart.shown(line, line, left, y, width - left, TextStyle.NORMAL, Align.START));
      y += TextStyle.NORMAL.line();
    }
    y = Math.max(y, factsTop + (mark == null ? 0 : Sign.HEIGHT)) + GAP;
    place(lines(HOW_TO_READ, width), y, width, parts);
  }

  private static void place(List<String> lines, double top, double width, List<Part> parts) {
    double y = top;
    for (String line : lines) {
      parts.add(TextPart.shown(line, line, 0, y, width, SMALL, Align.START));
      y += SMALL.line();
    }
  }
}
