package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.diagram.Part.Bar;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.PollLoad;
import org.headhouse.linter.line.Traffic;

/** How the time of a line is spent: broadcast, polls and what is free. */
record TimeBar(Traffic traffic) {
  private static final double HEIGHT = 86;

  /** With the line that says what is dashed. */
  private static final double OVERFULL_HEIGHT = 94;

  private static final double BAR_TOP = 20;
  private static final double BAR_HEIGHT = 14;
  private static final double LABEL_TOP = 46;

  /**
   * A stretch of the bar.
   *
   * @param detail how its share is computed
   */
  private record Share(String name, double share, Bar.Fill fill, String detail) {
    String label() {
      return name + " " + Shown.share(share);
    }
  }

  private List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    BroadcastLoad broadcast = traffic.broadcast();
    if (broadcast != null) {
      shares.add(
          new Share(
              "broadcast",
              traffic.broadcastShare(),
              Bar.Fill.SOLID,
              Shown.seconds(broadcast.seconds(traffic.serial()))
                  + " in every "
                  + Shown.seconds(broadcast.periodSeconds())));
    }
    if (!traffic.polls().isEmpty()) {
      shares.add(new Share("polls", traffic.pollShare(), Bar.Fill.LINED, detailOfPolls()));
    }
    double free = 1 - traffic.utilisation();
    if (free > 0) {
      shares.add(new Share("free", free, Bar.Fill.EMPTY, "for retries and what is added later"));
    }
    return shares;
  }

  private String detailOfPolls() {
    List<PollLoad> polls = traffic.polls();
    PollLoad first = polls.get(0);
    return polls.size() == 1
        ? first.zones()
            + " times "
            + Shown.seconds(first.seconds(traffic.serial()))
            + " in every "
            + Shown.seconds(first.periodSeconds())
        : polls.stream().mapToInt(PollLoad::zones).sum() + " units and equipment";
  }

  private String summary() {
    double utilisation = traffic.utilisation();
    return utilisation > 1
        ? "The traffic needs " + Shown.share(utilisation) + " of the time: it does not fit."
        : "The line is in use " + Shown.share(utilisation) + " of the time.";
  }

  /** What is to be seen, in words. */
  String description() {
    StringBuilder text = new StringBuilder(summary());
    for (Share share : shares()) {
      text.append(' ').append(share.label()).append(", ").append(share.detail()).append('.');
    }
    return text.toString();
  }

  /** The bar as a page. */
  Strip page(double width) {
    List<Part> parts = new ArrayList<>();
    parts.add(TextPart.fitted(summary(), 0, 0, width, TextStyle.STRONG, Align.START));
    List<Share> shares = shares();
    double whole = Math.max(1, traffic.utilisation());
    double inner = width - 4;
    double column = inner / shares.size();
    double x = 2;
    for (int i = 0; i < shares.size(); i++) {
      Share share = shares.get(i);
      double size = share.share() / whole * inner;
      parts.add(new Bar(new Area(x, BAR_TOP, size, BAR_HEIGHT), share.fill()));
      double centre = 2 + column * (i + 0.5);
      double from = x + size / 2;
      parts.add(Wire.lead(new Point(from, BAR_TOP + BAR_HEIGHT), new Point(centre, LABEL_TOP - 2)));
      label(share, centre, column, parts);
      x += size;
    }
    if (whole > 1) {
      allTheTime(2 + inner / whole, width, parts);
    }
    return new Strip(width, whole > 1 ? OVERFULL_HEIGHT : HEIGHT, parts, List.of());
  }

  private static void label(Share share, double centre, double column, List<Part> parts) {
    double left = centre - column / 2;
    TextStyle strong = TextStyle.STRONG;
    TextStyle small = TextStyle.SMALL;
    double room = column - 6;
    parts.add(TextPart.fitted(share.label(), left + 3, LABEL_TOP, room, strong, Align.MIDDLE));
    double top = LABEL_TOP + strong.line() + 1;
    parts.add(TextPart.fitted(share.detail(), left + 3, top, room, small, Align.MIDDLE));
  }

  /** The limit of the time that there is. */
  private static void allTheTime(double x, double width, List<Part> parts) {
    double bottom = LABEL_TOP + 2 * TextStyle.STRONG.line() + 4;
    parts.add(
        new Wire(
            List.of(new Point(x, BAR_TOP - 4), new Point(x, BAR_TOP + BAR_HEIGHT + 4)),
            Wire.Kind.LIMIT));
    parts.add(
        TextPart.fitted(
            "dashed: all the time there is", 0, bottom, width, TextStyle.SMALL, Align.START));
  }
}
