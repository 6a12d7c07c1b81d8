package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.result.Result;

/** The legend: what is wrong at each numbered sign. */
final class Legend {
  private static final double INDENT = Sign.WIDTH + 8;
  private static final double GAP = 6;
  private static final int MOST_RESULTS = 4;
  private static final int MOST_LINES = 5;

  private Legend() {}

  /** One sign with the results at its place. */
  record Entry(Mark mark, List<String> lines) {

    double height() {
      double text = TextStyle.STRONG.line() + lines.size() * TextStyle.NORMAL.line();
      return Math.max(Sign.HEIGHT, text) + GAP;
    }

    void place(double top, double width, List<Part> parts) {
      parts.add(Sign.at(0, top, mark));
      double room = width - INDENT;
      parts.add(TextPart.fitted(mark.place(), INDENT, top, room, TextStyle.STRONG, Align.START));
      double y = top + TextStyle.STRONG.line();
      for (String line : lines) {
        parts.add(TextPart.shown(line, line, INDENT, y, room, TextStyle.NORMAL, Align.START));
        y += TextStyle.NORMAL.line();
      }
    }
  }

  static List<Entry> of(List<Mark> marks, double width) {
    return marks.stream().map(mark -> new Entry(mark, lines(mark, width - INDENT))).toList();
  }

  private static List<String> lines(Mark mark, double room) {
    List<String> lines = new ArrayList<>();
    for (Result result : mark.results().subList(0, Math.min(MOST_RESULTS, mark.results().size()))) {
      lines.addAll(
          Lettering.wrap(Lettering.visible(text(result)), room, TextStyle.NORMAL, MOST_LINES));
    }
    int more = mark.results().size() - MOST_RESULTS;
    if (more > 0) {
      lines.add("and " + more + " more: see the list of results");
    }
    return lines;
  }

  private static String text(Result result) {
    return result.level().word() + ": " + result.message().text() + " [" + result.rule() + "]";
  }
}
