package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;

/**
 * The voltages along a line: up to two curves, one under the other over one axis of distance, or
 * side by side where each has room for its items in half of the width.
 */
final class LinePlot {
  private static final TextStyle SMALL = TextStyle.SMALL;
  private static final int MOST_STEPS = 12;
  private static final int FEW_STEPS = 5;
  private static final int MOST_ITEMS_SIDE_BY_SIDE = 40;
  private static final double TICK = 5;

  private final LineProfile profile;
  private final Measure measure;
  private final double width;
  private final boolean isSideBySide;
  private final List<VoltagePanel> panels = new ArrayList<>();

  LinePlot(LineProfile profile, SitePolicy policy, Measure measure, double width) {
    this.profile = profile;
    this.measure = measure;
    this.width = width;
    this.isSideBySide = profile.items() <= MOST_ITEMS_SIDE_BY_SIDE && !profile.idle().isEmpty();
    panel(
        "Signal at each item from its weakest sender",
        profile.received(),
        policy.signalMarginVolts());
    panel("Idle voltage at each item, D1 against D0", profile.idle(), policy.idleMarginVolts());
  }

  private void panel(String title, List<List<LineProfile.Value>> stretches, double margin) {
    if (!stretches.isEmpty()) {
      double room = isSideBySide ? (width - VoltagePanel.GAP) / 2 : width;
      double left = isSideBySide ? panels.size() * (room + VoltagePanel.GAP) : 0;
      panels.add(
          new VoltagePanel(
              title,
              stretches,
              profile.repeaters(),
              margin,
              distances(left, room),
              left,
              room,
              measure));
    }
  }

  private Scale distances(double left, double room) {
    return Scale.over(
        0,
        Math.max(1, measure.lengthOf(profile.lengthMetres())),
        isSideBySide ? FEW_STEPS : MOST_STEPS,
        left + VoltagePanel.LEFT,
        left + room - VoltagePanel.RIGHT);
  }

  /** Whether nothing can be computed. */
  boolean isEmpty() {
    return panels.isEmpty();
  }

  /** What is to be seen, in words. */
  String description() {
    return panels.stream().map(VoltagePanel::description).collect(Collectors.joining(" "));
  }

  /** The plot as a page. */
  Strip page() {
    List<Part> parts = new ArrayList<>();
    double top = 0;
    double bottom = 0;
    for (VoltagePanel panel : panels) {
      panel.place(top, parts);
      bottom = top + panel.height();
      if (isSideBySide) {
        bottom = axis(panel.distances(), bottom, parts);
      } else {
        top = bottom + VoltagePanel.GAP;
      }
    }
    if (!isSideBySide) {
      bottom = axis(panels.get(0).distances(), bottom, parts);
    }
    if (!profile.complete()) {
      String note = "A part of the line is not computed: a length or a value is not known.";
      parts.add(TextPart.fitted(note, 0, bottom, width, TextStyle.NORMAL, Align.START));
      bottom += TextStyle.NORMAL.line();
    }
    return new Strip(width, Math.ceil(bottom + 2), parts, List.of());
  }

  /** Draws the axis of distance, and returns its bottom. */
  private double axis(Scale distances, double y, List<Part> parts) {
    double room = (distances.end() - distances.start()) / distances.steps();
    for (double tick : distances.ticks()) {
      double x = distances.at(tick);
      parts.add(Wire.lead(new Point(x, y), new Point(x, y + TICK)));
      double left = x - room / 2;
      String text = Shown.plain(tick);
      parts.add(TextPart.fitted(text, left, y + TICK + 1, room, SMALL, Align.MIDDLE));
    }
    parts.add(Wire.lead(new Point(distances.start(), y), new Point(distances.end(), y)));
    String name = measure.unit() + " from the start of the line";
    double top = y + TICK + 1 + SMALL.line();
    double whole = distances.end() - distances.start();
    parts.add(TextPart.fitted(name, distances.start(), top, whole, SMALL, Align.MIDDLE));
    return top + SMALL.line() + 2;
  }
}
