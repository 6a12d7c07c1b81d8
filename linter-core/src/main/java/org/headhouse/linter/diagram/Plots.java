package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.diagram.Part.Wire;
import org.headhouse.linter.diagram.Part.Words;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.markup.XmlWriter;

/** Plots of a line's figures as SVG, each complete in itself. */
public final class Plots {
  private static final TextStyle SMALL = TextStyle.SMALL;
  private static final int MOST_STEPS = 12;

  private Plots() {}

  /**
   * The idle and the received voltage at each unit over the distance from the start of the line.
   * What a unit receives is taken from its weakest sender, and afresh behind a repeater.
   *
   * @param prefix for the ids of the drawing, a letter and then letters, digits or hyphens
   * @return empty where nothing can be computed
   */
  public static Optional<String> alongTheLine(
      LineFigures figures, Margins margins, Measure measure, PageFormat format, String prefix) {
    LineProfile profile = LineProfile.of(figures);
    double width = format.width();
    Scale distances =
        Scale.over(
            0,
            measure.lengthOf(profile.lengthMetres()),
            MOST_STEPS,
            VoltagePanel.LEFT,
            width - VoltagePanel.RIGHT);
    List<VoltagePanel> panels = panels(profile, margins, distances, measure);
    if (panels.isEmpty()) {
      return Optional.empty();
    }
    List<Part> parts = new ArrayList<>();
    StringBuilder told = new StringBuilder();
    double top = 0;
    for (VoltagePanel panel : panels) {
      panel.place(top, width, parts);
      told.append(panel.told()).append(' ');
      top += panel.height() + VoltagePanel.GAP;
    }
    double bottom = placeDistances(profile, distances, measure, top, width, parts);
    String title = "Voltages along the line";
    XmlWriter xml = Sheet.start(width, Math.ceil(bottom), prefix, title, told.toString().strip());
    new Drawing(xml).add(parts);
    return Optional.of(Sheet.end(xml));
  }

  private static List<VoltagePanel> panels(
      LineProfile profile, Margins margins, Scale distances, Measure measure) {
    List<VoltagePanel> panels = new ArrayList<>();
    if (!profile.received().isEmpty()) {
      panels.add(
          new VoltagePanel(
              "Received voltage at each unit, of its weakest sender",
              profile.received(),
              profile.repeaters(),
              margins.receivedVolts(),
              distances,
              measure));
    }
    if (!profile.idle().isEmpty()) {
      panels.add(
          new VoltagePanel(
              "Voltage of the idle line at each unit, D1 against D0",
              profile.idle(),
              profile.repeaters(),
              margins.idleVolts(),
              distances,
              measure));
    }
    return panels;
  }

  /** The axis that the panels share, with the repeaters under it. */
  private static double placeDistances(
      LineProfile profile,
      Scale distances,
      Measure measure,
      double panelsBottom,
      double width,
      List<Part> parts) {
    double y = panelsBottom - VoltagePanel.GAP;
    for (double tick : distances.ticks()) {
      double x = distances.at(tick);
      double room = (distances.end() - distances.start()) / distances.steps();
      parts.add(Wire.lead(new Point(x, y), new Point(x, y + 5)));
      parts.add(Words.fitted(Shown.plain(tick), x - room / 2, y + 6, room, SMALL, Align.MIDDLE));
    }
    parts.add(Wire.lead(new Point(distances.start(), y), new Point(distances.end(), y)));
    double next = y + 6 + SMALL.line();
    String axis = measure.unit() + " of cable from the start of the line";
    double room = distances.end() - distances.start();
    parts.add(Words.fitted(axis, distances.start(), next, room, SMALL, Align.MIDDLE));
    next += SMALL.line();
    if (!profile.complete()) {
      String note = "A part of the line is not computed: a length or a value is not known.";
      parts.add(Words.fitted(note, 0, next + 3, width, TextStyle.NORMAL, Align.START));
      next += TextStyle.NORMAL.line() + 3;
    }
    return next + 2;
  }

  /**
   * How the time of a line is spent, as a bar.
   *
   * @param prefix for the ids of the drawing, a letter and then letters, digits or hyphens
   */
  public static String useOfTime(Traffic traffic, PageFormat format, String prefix) {
    TimeBar bar = new TimeBar(traffic);
    List<Part> parts = new ArrayList<>();
    bar.place(format.width(), parts);
    XmlWriter xml =
        Sheet.start(
            format.width(), TimeBar.HEIGHT, prefix, "How the line's time is spent", bar.told());
    new Drawing(xml).add(parts);
    return Sheet.end(xml);
  }
}
