package org.headhouse.linter.diagram;

import java.util.List;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.TextPart;
import org.jspecify.annotations.Nullable;

/**
 * The heading of every page, and the cautions at its foot.
 *
 * @param mark of the line as a whole, or null
 */
record Heading(String title, String facts, @Nullable Mark mark) {
  private static final double PAGE_NUMBER = 110;
  private static final double GAP = 4;
  private static final TextStyle SMALL = TextStyle.SMALL;
  private static final int MOST_LINES = 3;

  private static final String HOW_TO_READ =
      "Read each row from left to right, then the next; the cable turns back between the rows."
          + " Two legs into a box: the cable goes in and out at the terminals."
          + " A dot with one leg: a stub. Dashed: between buildings.";

  private static final String CAUTION =
      "Isolate and lock off the supply before you open a unit. Keep signal wiring apart from line"
          + " voltage. Work by licensed people, under the local electrical code and the makers'"
          + " manuals, which come before this plan.";

  double height(double width) {
    return TextStyle.TITLE.line()
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

  void place(int number, int pages, double width, List<Part> parts) {
    TextStyle strong = TextStyle.TITLE;
    parts.add(TextPart.fitted(title, 0, 0, width - PAGE_NUMBER, strong, Align.START));
    String page = "page " + number + " of " + pages;
    parts.add(
        TextPart.fitted(page, width - PAGE_NUMBER, 1, PAGE_NUMBER, TextStyle.NORMAL, Align.END));
    double y = strong.line() + GAP;
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

  static double footHeight(double width) {
    return 2 * GAP + lines(CAUTION, width).size() * SMALL.line() + 2;
  }

  static void placeFoot(double top, double width, List<Part> parts) {
    place(lines(CAUTION, width), top + 2 * GAP, width, parts);
  }

  private static void place(List<String> lines, double top, double width, List<Part> parts) {
    double y = top;
    for (String line : lines) {
      parts.add(TextPart.shown(line, line, 0, y, width, SMALL, Align.START));
      y += SMALL.line();
    }
  }
}
